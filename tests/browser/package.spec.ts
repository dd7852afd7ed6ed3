import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

import { expect, test } from '@playwright/test';

import { resume, suspend } from '@site/packages/launch/progress.ts';

import { ensurePackage } from './package-build.ts';

const FOLDER = 'dist-packages/scorm12';
const TYPES: Record<string, string> = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css', '.json': 'application/json', '.svg': 'image/svg+xml', '.woff2': 'font/woff2' }; // prettier-ignore

/** A learning platform in small: a page with an open SCORM run-time, and the package in its frame, unpacked deep down. */
const host = (kept: { line: string; page: string }) => `<!doctype html><html lang="en"><title>Platform</title>
<script src="/scorm-again.js"></script>
<script>
  window.API = new window.Scorm12API({ autocommit: false, logLevel: 5 });
  window.API.loadFromJSON({ suspend_data: ${JSON.stringify(kept.line)}, core: { lesson_location: ${JSON.stringify(kept.page)} } }, 'cmi');
</script>
<iframe src="/files/course 7/unpacked/index.html" width="1100" height="700" title="Package"></iframe></html>`;

let server: Server;
let kept = { line: '', page: '' };

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
  kept = { line: '', page: '' };
  const missing: string[] = [];
  page.on('response', (response) => response.status() >= 400 && missing.push(response.url()));
  const { course } = await open(page);
  await expect(course.getByRole('heading', { level: 1 })).toBeVisible();
  expect(await told(page, 'cmi.core.lesson_status')).toBe('incomplete');
  await course.locator('footer').getByRole('link', { name: 'Course', exact: true }).click();
  await course.getByRole('link', { name: 'What the ridges are for' }).first().click();
  await expect(course.getByRole('heading', { level: 1, name: 'What the ridges are for' })).toBeVisible();
  await course.locator('[data-finish] button').click();
  await expect.poll(() => told(page, 'cmi.core.lesson_status')).toBe('completed');
  expect(resume(await told(page, 'cmi.suspend_data')).done).toEqual(['what-the-ridges-are-for']);
  expect(await told(page, 'cmi.core.lesson_location')).toContain('lessons/');
  expect(missing).toEqual([]);
});

test('it comes back where the learner left off', async ({ page }) => {
  kept = { line: suspend({ done: ['mixing'], points: {} }), page: 'job/index.html' };
  const { course } = await open(page);
  await expect(course.getByRole('heading', { level: 1, name: 'Job sheet' })).toBeVisible();
  await expect.poll(async () => resume(await told(page, 'cmi.suspend_data')).done).toEqual(['mixing']);
});
