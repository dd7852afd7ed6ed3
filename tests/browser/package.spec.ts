import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

import { expect, test } from '@playwright/test';

import { outcomes } from '@lessons/outcomes.ts';
import { resume, suspend } from '@site/packages/launch/progress.ts';

import { ensurePackage } from './package-build.ts';

const FOLDER = 'dist-packages/scorm12';
const TYPES: Record<string, string> = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css', '.json': 'application/json', '.svg': 'image/svg+xml', '.woff2': 'font/woff2' }; // prettier-ignore

interface Kept {
  learner: string;
  line: string;
  page: string;
}

/** A learning platform in small: a page with an open SCORM run-time, and the package in its frame, unpacked deep down. */
const host = ({ learner, line, page }: Kept) => `<!doctype html><html lang="en"><title>Platform</title>
<script src="/scorm-again.js"></script>
<script>
  window.API = new window.Scorm12API({ autocommit: false, logLevel: 5 });
  window.API.loadFromJSON({ suspend_data: ${JSON.stringify(line)}, core: { lesson_location: ${JSON.stringify(page)}, student_id: ${JSON.stringify(learner)} } }, 'cmi');
</script>
<iframe src="/files/course 7/unpacked/index.html" width="1100" height="700" title="Package"></iframe></html>`;

let server: Server;
const fresh: Kept = { learner: 'A-17', line: '', page: '' };
let kept = fresh;

test.beforeAll(() => {
  test.setTimeout(600_000);
  ensurePackage(FOLDER);
  server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://x').pathname);
    const send = (type: string, body: string | Buffer) => response.writeHead(200, { 'content-type': type }).end(body);
    if (path === '/') return send('text/html', host(kept));
    if (path === '/scorm-again.js')
      return send('text/javascript', readFileSync('node_modules/scorm-again/dist/scorm12.min.js'));
    const file = normalize(join(FOLDER, path.replace('/files/course 7/unpacked/', '')));
    // No folder has an index here, as on many platforms.
    if (!file.startsWith(FOLDER) || !existsSync(file) || statSync(file).isDirectory())
      return response.writeHead(404).end();
    const body = readFileSync(file);
    if (path.endsWith('/unpacked/index.html'))
      return send('text/html', String(body).replace('data-modules=""', 'data-modules="what-the-ridges-are-for"'));
    return send(TYPES[extname(file)] ?? 'application/octet-stream', body);
  }).listen(0);
});
test.afterAll(() => server.close());

const open = async (page: import('@playwright/test').Page) => {
  const { port } = server.address() as AddressInfo;
  await page.goto(`http://localhost:${port}/`);
  const launch = page.frameLocator('iframe');
  return { launch, course: launch.frameLocator('iframe') };
};
const told = (page: import('@playwright/test').Page, element: string) =>
  page.evaluate(
    (name) => (window as unknown as { API: { lmsGetValue: (name: string) => string } }).API.lmsGetValue(name),
    element,
  );

test('the SCORM package runs from any folder and tells the platform what was done', async ({ page }) => {
  kept = fresh;
  const missing: string[] = [];
  page.on('response', (response) => response.status() >= 400 && missing.push(response.url()));
  const { launch, course } = await open(page);
  // The course opens at the first module that counts.
  await expect(course.getByRole('heading', { level: 1, name: 'What the ridges are for' })).toBeVisible();
  expect(await told(page, 'cmi.core.lesson_status')).toBe('incomplete');
  await expect(launch.getByRole('status')).toContainText('Counts here: What the ridges are for. 0 of 1 module done.');
  await course.locator('[data-finish] button').click();
  await expect.poll(() => told(page, 'cmi.core.lesson_status')).toBe('completed');
  await expect(launch.getByRole('status')).toContainText('1 of 1 module done.');
  expect(resume(await told(page, 'cmi.suspend_data')).done).toEqual(['what-the-ridges-are-for']);
  expect(await told(page, 'cmi.core.lesson_location')).toContain('lessons/');
  expect(missing).toEqual([]);
});

test('it comes back where the learner left off', async ({ page }) => {
  kept = { ...fresh, line: suspend({ done: ['mixing'], points: {} }), page: 'job/index.html' };
  const { course } = await open(page);
  await expect(course.getByRole('heading', { level: 1, name: 'Job sheet' })).toBeVisible();
  await expect.poll(async () => resume(await told(page, 'cmi.suspend_data')).done).toEqual(['mixing']);
});

test('what was done on another machine shows as done here', async ({ page }) => {
  kept = { ...fresh, line: suspend({ done: ['mixing'], points: {} }), page: 'record/index.html' };
  const { course } = await open(page);
  await expect(course.getByRole('row', { name: /Mixing/ })).toContainText(/done/i);
});

test.describe('score and pass mark', () => {
  const [first] = outcomes['what-the-ridges-are-for'];
  for (const { points, status, words } of [
    { points: 0.9, status: 'passed', words: 'Points so far 90 %. Passed.' },
    { points: 0.6, status: 'incomplete', words: 'Points so far 60 %. Pass mark 80 %.' },
  ])
    test(`of ${points * 100} points in a hundred make it ${status}`, async ({ page }) => {
      kept = { ...fresh, line: suspend({ done: ['what-the-ridges-are-for'], points: { [first]: points } }) };
      const { launch } = await open(page);
      await expect(launch.getByRole('status')).toContainText(words);
      await expect.poll(() => told(page, 'cmi.core.lesson_status')).toBe(status);
      expect(await told(page, 'cmi.core.score.raw')).toBe(String(points * 100));
    });
});

test('on a machine that many learners share, each has a record of their own', async ({ page }) => {
  kept = fresh;
  const mine = await open(page);
  await mine.course.locator('[data-finish] button').click();
  await expect.poll(() => told(page, 'cmi.core.lesson_status')).toBe('completed');
  kept = { ...fresh, learner: 'B-4' };
  const theirs = await open(page);
  await expect(theirs.launch.getByRole('status')).toContainText('0 of 1 module done.');
  expect(await told(page, 'cmi.core.lesson_status')).toBe('incomplete');
  kept = fresh;
  await open(page);
  await expect.poll(() => told(page, 'cmi.core.lesson_status')).toBe('completed');
});
