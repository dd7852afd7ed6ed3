import { readFile } from 'node:fs/promises';

import { expect, test, type Page } from '@playwright/test';

import { accessible, fits, watch } from './watch.ts';

const lesson = '/lessons/what-the-ridges-are-for/';

async function finish(page: Page): Promise<void> {
  await page.goto(lesson);
  await page.getByRole('button', { name: 'I have done this module' }).click();
  await expect(page.getByText('The ridge is pressed')).toBeVisible();
}

test('a finished module presses its ridge on the first page and is on the record', async ({ page }) => {
  const seen = watch(page);
  await finish(page);
  await page.goto('/');
  await expect(page.locator('[data-module="what-the-ridges-are-for"]')).toHaveAttribute('data-state', 'done');
  await expect(page.getByText('1 of 16 modules done.')).toBeVisible();
  await expect(page.getByRole('link', { name: /Go on with module 2/ })).toHaveAttribute('href', /reading-a-notch/);
  await page.goto('/record/');
  await expect(page.getByRole('row', { name: /What the ridges are for/ })).toContainText('done');
  await expect(page.getByText('Kept in this browser.')).toBeVisible();
  await accessible(page);
  await page.setViewportSize({ width: 360, height: 800 });
  await fits(page);
  seen.clean();
});

test('the record goes out as a file and comes into another browser, merged', async ({ page, browser }) => {
  await finish(page);
  await page.goto('/record/');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).click();
  const path = await (await download).path();
  expect(JSON.parse(await readFile(path, 'utf8'))).toMatchObject({ kind: 'ridge-to-bed-record', version: 1 });

  const other = await (await browser.newContext()).newPage();
  await other.goto('/record/');
  await expect(other.getByText('Nothing yet.')).toBeVisible();
  const input = other.getByLabel('Take in a file');
  await input.setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from('{"kind":') });
  await expect(other.getByText('Nothing was taken in.')).toBeVisible();
  await expect(other.getByText(/cut short on the way/)).toBeVisible();
  await input.setInputFiles(path);
  await expect(other.getByText(/Taken in\. 1 modules/)).toBeVisible();
  await expect(other.getByRole('row', { name: /What the ridges are for/ })).toContainText('done');
  await other.reload();
  await expect(other.getByRole('row', { name: /What the ridges are for/ })).toContainText('done');
  await other.getByRole('button', { name: 'Erase everything' }).click();
  await other.getByRole('button', { name: 'Yes, erase it' }).click();
  await expect(other.getByText('Nothing yet.')).toBeVisible();
});

test('two tabs share one record', async ({ page, context }) => {
  await page.goto('/record/');
  await expect(page.getByText('Nothing yet.')).toBeVisible();
  const other = await context.newPage();
  await finish(other);
  await expect(page.getByRole('row', { name: /What the ridges are for/ })).toContainText('done');
});

test('where the browser keeps nothing the page says so and still works', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', {
      value: {
        open: () => {
          throw new DOMException('closed', 'InvalidStateError');
        },
      },
    });
  });
  await finish(page);
  await page.goto('/record/');
  await expect(page.getByText(/This browser keeps nothing/)).toBeVisible();
});

test('a full store loses nothing and says what to do', async ({ page }) => {
  await page.goto('/record/');
  await expect(page.getByText('Kept in this browser.')).toBeVisible();
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  });
  const record = { modules: [{ slug: 'mixing', state: 'done', at: 1 }], predictions: [], answers: [], cards: [] };
  await page.getByLabel('Take in a file').setInputFiles({
    name: 'r.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify({ kind: 'ridge-to-bed-record', version: 1, record })),
  });
  await expect(page.getByText(/no room left/)).toBeVisible();
  await expect(page.getByRole('row', { name: /Mixing/ })).toContainText('done');
});

test('the check at a module’s end asks three, keeps the answers, and what was learned comes back', async ({ page }) => {
  const seen = watch(page);
  await page.clock.install({ time: new Date('2026-03-01T19:00:00') });
  await finish(page);
  const check = page.getByRole('region', { name: 'Check yourself' });
  await check.getByRole('button', { name: 'Take the three' }).click();
  await expect(check.getByRole('heading', { name: /1 of 3/ })).toBeVisible();
  await accessible(page);
  for (let question = 0; question < 3; question += 1) {
    await check.getByRole('button', { name: 'Leave it out' }).click();
    await check.getByRole('button', { name: /Next|See the result/ }).click();
  }
  await expect(check.getByText('0 of 3.')).toBeVisible();

  await page.goto('/review/');
  await expect(page.getByText('Nothing is due.')).toBeVisible();
  await expect(page.getByRole('row', { name: /say why mortar is combed/ })).toContainText('tomorrow');
  await page.clock.setFixedTime(new Date('2026-03-02T19:30:00'));
  await page.goto('/');
  await expect(page.getByRole('heading', { name: 'Today: five minutes' })).toBeVisible();
  await page.getByRole('link', { name: 'Review now' }).click();
  await page.getByRole('button', { name: /Begin: 3 questions/ }).click();
  await expect(page.getByRole('heading', { name: /1 of 3/ })).toBeVisible();
  await accessible(page);
  seen.clean();
});
