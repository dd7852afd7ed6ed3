import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

import { expect, test } from '@playwright/test';

import { ensurePackage } from './package-build.ts';

const FOLDER = 'dist-packages/cmi5';
const TYPES: Record<string, string> = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css', '.json': 'application/json', '.svg': 'image/svg+xml', '.woff2': 'font/woff2' }; // prettier-ignore
const ACTIVITY = 'urn:platform:unit:1';
const REGISTRATION = '6f2a1c9e-1d3b-4c5a-9e7f-0a1b2c3d4e5f';

interface Statement {
  actor: { account: { name: string } };
  verb: { id: string };
  object: { id: string };
  result?: { completion?: boolean; success?: boolean; duration?: string };
  context: { registration: string; contextActivities: { category?: { id: string }[] } };
}

/** A learning record store in small, with what cmi5 (Quartz, sections 8 and 10) has a platform answer. */
const said: Statement[] = [];
const states = new Map<string, string>([
  ['LMS.LaunchData', JSON.stringify({ contextTemplate: { contextActivities: {}, extensions: { 'https://w3id.org/xapi/cmi5/context/extensions/sessionid': 's1' } }, launchMode: 'Normal', moveOn: 'CompletedOrPassed' })],
]); // prettier-ignore
let server: Server;

test.beforeAll(() => {
  test.setTimeout(600_000);
  ensurePackage(FOLDER);
  server = createServer((request, response) => {
    const url = new URL(request.url ?? '/', 'http://x');
    const send = (type: string, body: string | Buffer) => response.writeHead(200, { 'content-type': type }).end(body);
    let body = '';
    request.on('data', (piece) => (body += String(piece)));
    request.on('end', () => {
      const state = url.searchParams.get('stateId') ?? '';
      if (url.pathname === '/fetch') return send('application/json', '{"auth-token":"YTpi"}');
      if (url.pathname === '/xapi/statements') {
        said.push(...([JSON.parse(body)].flat() as Statement[]));
        return send('application/json', '["00000000-0000-4000-8000-000000000000"]');
      }
      if (url.pathname === '/xapi/activities/state') {
        if (request.method !== 'GET') {
          states.set(state, body);
          return response.writeHead(204).end();
        }
        const found = states.get(state);
        return found === undefined ? response.writeHead(404).end() : send('application/json', found);
      }
      if (url.pathname.startsWith('/xapi/')) return send('application/json', '{}');
      const file = normalize(join(FOLDER, decodeURIComponent(url.pathname)));
      if (!file.startsWith(FOLDER) || !existsSync(file) || statSync(file).isDirectory())
        return response.writeHead(404).end();
      const text = readFileSync(file);
      return send(
        TYPES[extname(file)] ?? 'application/octet-stream',
        url.pathname === '/index.html'
          ? String(text).replace('data-modules=""', 'data-modules="what-the-ridges-are-for"')
          : text,
      );
    });
  }).listen(0);
});
test.afterAll(() => server.close());

test('the cmi5 package says initialized, completed and terminated, each once and with the profile’s own context', async ({
  page,
}) => {
  const { port } = server.address() as AddressInfo;
  const here = `http://localhost:${port}`;
  const launch = new URLSearchParams({
    endpoint: `${here}/xapi/`,
    fetch: `${here}/fetch`,
    actor: JSON.stringify({ objectType: 'Agent', account: { homePage: 'http://platform.example', name: 'learner-1' } }),
    registration: REGISTRATION,
    activityId: ACTIVITY,
  });
  await page.goto(`${here}/index.html?${launch.toString()}`);
  const course = page.frameLocator('iframe');
  await expect(course.getByRole('heading', { level: 1 })).toBeVisible();
  await course.locator('footer').getByRole('link', { name: 'Course', exact: true }).click();
  await course.getByRole('link', { name: 'What the ridges are for' }).first().click();
  await course.locator('[data-finish] button').click();
  const verbs = () => said.map(({ verb }) => verb.id.split('/').at(-1));
  await expect.poll(verbs).toEqual(['initialized', 'completed']);
  await page.goto('about:blank');
  await expect.poll(verbs).toEqual(['initialized', 'completed', 'terminated']);
  for (const { actor, object, context } of said) {
    expect(actor.account.name).toBe('learner-1');
    expect(object.id).toBe(ACTIVITY);
    expect(context.registration).toBe(REGISTRATION);
    // Section 9.6.2: every cmi5-defined statement carries the category activity.
    expect(context.contextActivities.category?.map(({ id }) => id)).toContain(
      'https://w3id.org/xapi/cmi5/context/categories/cmi5',
    );
  }
  expect(said[1]?.result).toMatchObject({ completion: true });
  expect(said[1]?.result?.duration).toMatch(/^PT/);
  expect(states.get('ridge-to-bed')).toContain('rtb1.');
});
