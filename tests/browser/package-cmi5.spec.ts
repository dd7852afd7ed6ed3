import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

import { expect, test } from '@playwright/test';

import { ensurePackage } from './package-build.ts';
import { bodyOf, RecordStore, statementFaults, verbOf } from './record-store.ts';

const FOLDER = 'dist-packages/cmi5';
const TYPES: Record<string, string> = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css', '.json': 'application/json', '.svg': 'image/svg+xml', '.woff2': 'font/woff2' }; // prettier-ignore
const ACTIVITY = 'urn:platform:unit:1';
const REGISTRATION = '6f2a1c9e-1d3b-4c5a-9e7f-0a1b2c3d4e5f';

const store = new RecordStore();
let server: Server;

test.beforeAll(() => {
  test.setTimeout(600_000);
  ensurePackage(FOLDER);
  store.launch();
  server = createServer((request, response) => {
    void bodyOf(request).then((body) => {
      if (store.answer(request, body, response)) return;
      const { pathname } = new URL(request.url ?? '/', 'http://x');
      const file = normalize(join(FOLDER, decodeURIComponent(pathname)));
      if (!file.startsWith(FOLDER) || !existsSync(file) || statSync(file).isDirectory()) {
        response.writeHead(404).end();
        return;
      }
      const text = readFileSync(file);
      response
        .writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream' })
        .end(
          pathname === '/index.html'
            ? String(text).replace('data-modules=""', 'data-modules="what-the-ridges-are-for"')
            : text,
        );
    });
  }).listen(0);
});
test.afterAll(() => server.close());

/** The address a platform opens the package at. */
const launchAt = (here: string): string => {
  const launch = new URLSearchParams({
    endpoint: `${here}/xapi/`,
    fetch: `${here}/fetch`,
    actor: JSON.stringify({ objectType: 'Agent', account: { homePage: 'http://platform.example', name: 'learner-1' } }),
    registration: REGISTRATION,
    activityId: ACTIVITY,
  });
  return `${here}/index.html?${launch.toString()}`;
};

test('the cmi5 package says initialized, completed and terminated, each once and with the profile’s own context', async ({
  page,
}) => {
  const { port } = server.address() as AddressInfo;
  const here = `http://localhost:${port}`;
  await page.goto(launchAt(here));
  const course = page.frameLocator('iframe');
  await course.locator('[data-finish] button').click();
  const verbs = () => store.said.map(verbOf);
  await expect.poll(verbs).toEqual(['initialized', 'completed']);
  await page.goto('about:blank');
  await expect.poll(verbs).toEqual(['initialized', 'completed', 'terminated']);
  expect(store.said.flatMap(statementFaults)).toEqual([]);
  for (const { actor, object, context } of store.said) {
    expect(actor.account.name).toBe('learner-1');
    expect(object.id).toBe(ACTIVITY);
    expect(context.registration).toBe(REGISTRATION);
    // Section 9.6.2: every cmi5-defined statement carries the category activity.
    expect(context.contextActivities.category?.map(({ id }) => id)).toContain(
      'https://w3id.org/xapi/cmi5/context/categories/cmi5',
    );
  }
  expect(store.said[1]?.result).toMatchObject({ completion: true });
  expect(store.said[1]?.result?.duration).toMatch(/^PT/);
  expect(store.states.get('ridge-to-bed')).toContain('rtb1.');
});

test('where the platform gives no answer the course works, and the page says that nothing is reported', async ({
  page,
}) => {
  const { port } = server.address() as AddressInfo;
  await page.route('**/fetch', (route) =>
    route.fulfill({ json: { 'error-code': '1', 'error-text': 'Already in use' } }),
  );
  await page.goto(launchAt(`http://localhost:${port}`));
  await expect(page.getByRole('alert')).toContainText('The learning platform did not answer.');
  const course = page.frameLocator('iframe');
  await expect(course.getByRole('heading', { level: 1, name: 'What the ridges are for' })).toBeVisible();
});
