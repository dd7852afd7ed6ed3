import { appendFile, cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { expect, test, type Page } from '@playwright/test';

import { serve } from './static-server.ts';
import { watch } from './watch.ts';

test.use({ serviceWorkers: 'allow' });

const keptReady = (page: Page) =>
  page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    if (active && active.state !== 'activated')
      await new Promise<void>((done) =>
        active.addEventListener('statechange', () => active.state === 'activated' && done()),
      );
  });

test('after the first visit every part opens without a network, and the page says it is offline', async ({
  page,
  context,
}) => {
  const seen = watch(page);
  await page.goto('/');
  await keptReady(page);
  await expect(page.getByText('It is all on this device now')).toBeVisible();
  await context.setOffline(true);
  for (const [path, title] of [
    ['/lessons/', 'The course'],
    ['/sources/', 'Sources'],
    ['/job/', 'Job sheet'],
    ['/rounds/', 'Rounds'],
    ['/bench/?wall', 'Setting bench'],
    ['/nowhere/', 'No such page'],
    ['/record/', 'My record'],
  ] as const) {
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 }), path).toContainText(title);
  }
  await page.goto('/lessons/what-the-ridges-are-for/');
  await expect(page.getByText('You are offline.')).toBeVisible();
  const figure = page.getByRole('figure', { name: /Press only/ });
  await figure.scrollIntoViewIfNeeded();
  await figure.getByRole('slider').fill('40');
  await figure.getByRole('button', { name: /Set and pull/ }).click();
  await expect(figure.locator('canvas')).toHaveCount(2);
  await context.setOffline(false);
  await expect(page.getByText('You are offline.')).toBeHidden();
  seen.clean();
});

test('a new edition waits for the reader’s word and keeps the record', async ({ browser }) => {
  const folder = await mkdtemp(join(tmpdir(), 'edition-'));
  await cp('dist', folder, { recursive: true });
  const site = await serve(folder);
  const context = await browser.newContext();
  try {
    const page = await context.newPage();
    await page.goto(`${site.url}/lessons/what-the-ridges-are-for/`);
    await keptReady(page);
    await page.getByRole('button', { name: 'I have done this module' }).click();
    await expect(page.getByText('The ridge is pressed')).toBeVisible();

    // Another edition: one page changed, and the worker's list of files with it.
    const changed = join(folder, 'terms/index.html');
    await writeFile(changed, (await readFile(changed, 'utf8')).replaceAll('Terms of the trade', 'Words of the trade'));
    const worker = join(folder, 'sw.js');
    const text = await readFile(worker, 'utf8');
    const entry = /\{url:"terms\/index\.html",revision:"[^"]+"\}/;
    expect(text).toMatch(entry);
    await writeFile(worker, text.replace(entry, '{url:"terms/index.html",revision:"next"}'));
    await appendFile(worker, '\n// next edition\n');

    await page.goto(`${site.url}/terms/`);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Terms of the trade');
    await expect(page.getByText('A new edition of this manual is ready.')).toBeVisible();
    await page.getByRole('button', { name: 'Use it now' }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Words of the trade');
    await page.goto(`${site.url}/record/`);
    await expect(page.getByRole('row', { name: /What the ridges are for/ })).toContainText('done');
  } finally {
    await context.close();
    await site.stop();
    await rm(folder, { recursive: true });
  }
});

test('the site can be installed', async ({ page, request }) => {
  await page.goto('/');
  const href = await page.locator('link[rel="manifest"]').getAttribute('href');
  const manifest = (await (await request.get(href ?? '')).json()) as { icons: { src: string }[]; start_url: string };
  expect(manifest.start_url).toBe('./');
  for (const { src } of manifest.icons) expect((await request.get(`/${src}`)).ok(), src).toBe(true);
});
