import { expect, test, type BrowserContext, type Page } from '@playwright/test';

import type { LearnerRecord } from '@site/storage/record/shape.ts';

import { watch } from './watch.ts';

/** A record as a file, long enough that writing it takes a while. */
function recordFile(answers: number): { name: string; mimeType: string; buffer: Buffer } {
  const record: LearnerRecord = {
    modules: [{ slug: 'mixing', state: 'done', at: 1 }],
    predictions: [],
    answers: Array.from({ length: answers }, (_, n) => ({
      id: `${'x'.repeat(100)}.${n}`,
      module: 'mixing',
      outcome: 'part-bag',
      template: 't',
      seed: n,
      slot: 0,
      points: 1,
      ideas: [],
      from: 'round',
      at: n,
    })),
    cards: [],
  };
  const text = JSON.stringify({ kind: 'ridge-to-bed-record', version: 1, record });
  return { name: 'record.json', mimeType: 'application/json', buffer: Buffer.from(text) };
}

/** Entries that the browser keeps, by store. */
const kept = (page: Page): Promise<{ modules: number; answers: number }> =>
  page.evaluate(
    () =>
      new Promise((done, fail) => {
        const opening = indexedDB.open('ridge-to-bed');
        opening.onerror = () => fail(new Error('closed'));
        opening.onsuccess = () => {
          const change = opening.result.transaction(['modules', 'answers']);
          const counts = {
            modules: change.objectStore('modules').count(),
            answers: change.objectStore('answers').count(),
          };
          change.oncomplete = () => {
            opening.result.close();
            done({ modules: counts.modules.result, answers: counts.answers.result });
          };
        };
      }),
  );

async function opened(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto('/record/');
  await expect(page.getByText('Kept in this browser.')).toBeVisible();
  return page;
}

test('a page closed in the middle of writing leaves all of the change or nothing of it', async ({ browser }) => {
  const file = recordFile(3000);
  for (const pauseMs of [0, 30, 80, 160, 320]) {
    const context = await browser.newContext();
    const page = await opened(context);
    await page.getByLabel('Take in a file').setInputFiles(file);
    await page.waitForTimeout(pauseMs);
    await page.close();
    const after = await opened(context);
    expect([JSON.stringify({ modules: 0, answers: 0 }), JSON.stringify({ modules: 1, answers: 3000 })]).toContain(
      JSON.stringify(await kept(after)),
    );
    await context.close();
  }
});

test('an entry that is refused takes its whole change with it, and nothing is lost in the page', async ({ page }) => {
  await page.goto('/record/');
  await expect(page.getByText('Kept in this browser.')).toBeVisible();
  await page.evaluate(() => {
    const { put } = IDBObjectStore.prototype;
    let left = 20;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...entry: [unknown]) {
      left -= 1;
      if (left < 0) throw new DOMException('no room', 'QuotaExceededError');
      return put.apply(this, entry);
    };
  });
  await page.getByLabel('Take in a file').setInputFiles(recordFile(60));
  await expect(page.getByText(/no room left/)).toBeVisible();
  await expect(page.getByRole('row', { name: /Mixing/ })).toContainText('done');
  expect(await kept(page)).toEqual({ modules: 0, answers: 0 });
});

test('a store that is truly full says so, and writes what it holds once there is room', async ({ page, baseURL }) => {
  const wire = await page.context().newCDPSession(page);
  const room = (quotaSize?: number): Promise<unknown> =>
    wire.send('Storage.overrideQuotaForOrigin', {
      origin: new URL(baseURL ?? '').origin,
      ...(quotaSize && { quotaSize }),
    });
  await page.goto('/record/');
  await expect(page.getByText('Kept in this browser.')).toBeVisible();
  await room(1000);
  await page.getByLabel('Take in a file').setInputFiles(recordFile(3000));
  await expect(page.getByText(/no room left/)).toBeVisible();
  await expect(page.getByRole('row', { name: /Mixing/ })).toContainText('done');
  await room();
  await page.getByLabel('Take in a file').setInputFiles(recordFile(1));
  await expect(page.getByText('Kept in this browser.')).toBeVisible();
  expect(await kept(page)).toEqual({ modules: 1, answers: 3000 });
});

/** What a person does first on each page that keeps something. */
const works: [path: string, does: (page: Page) => Promise<void>][] = [
  [
    '/rounds/',
    async (page) => {
      await page.getByRole('button', { name: 'Begin', exact: true }).first().click();
      await expect(page.getByText(/round lasts as long as this page/)).toBeVisible();
    },
  ],
  [
    '/job/',
    async (page) => {
      await page.getByLabel('Name of the job').fill('Mill Street hall');
      await expect(page.getByText(/Use the link to carry the job on/)).toBeVisible();
    },
  ],
  [
    '/eye/',
    async (page) => {
      await page.getByRole('button', { name: 'Count it' }).click();
      await expect(page.getByText(/your guesses last as long as this page/)).toBeVisible();
    },
  ],
  [
    '/crew/',
    async (page) => {
      await page.getByLabel('Helper', { exact: true }).fill('Jo Lind');
      await expect(page.getByText(/save the cards as a file/)).toBeVisible();
    },
  ],
  [
    '/desk/',
    async (page) => {
      await page.getByRole('button', { name: 'Set this round' }).click();
      await expect(page.getByText(/save the desk as a file/).first()).toBeVisible();
    },
  ],
  ['/record/', (page) => expect(page.getByText(/This browser keeps nothing/)).toBeVisible()],
  ['/review/', (page) => expect(page.getByRole('link', { name: /course/i }).first()).toBeVisible()],
  ['/bench/', (page) => expect(page.getByRole('button', { name: 'Set the tile' })).toBeVisible()],
  [
    '/',
    async (page) => {
      await page.getByRole('radio', { name: 'millimetres and metres' }).check({ force: true });
      await expect(page.locator('html')).toHaveAttribute('data-units', 'metric');
    },
  ],
];

for (const [path, does] of works)
  test(`${path} works, and tells it, where the browser keeps nothing at all`, async ({ page }) => {
    await page.addInitScript(() => {
      const closed = {
        get: () => {
          throw new DOMException('The operation is insecure.', 'SecurityError');
        },
      };
      Object.defineProperty(window, 'localStorage', closed);
      Object.defineProperty(window, 'sessionStorage', closed);
      Object.defineProperty(window, 'indexedDB', { value: undefined });
      Object.defineProperty(window, 'caches', closed);
      Object.defineProperty(navigator, 'serviceWorker', { value: undefined });
    });
    const seen = watch(page);
    await page.goto(path);
    await expect(page.locator('astro-island[ssr][client="load"]')).toHaveCount(0);
    await does(page);
    seen.clean();
  });
