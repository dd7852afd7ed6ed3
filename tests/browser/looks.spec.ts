/**
 * The look of each part, held by pictures: one on a phone, in the light, one on a laptop, in the dark, and the wall on a
 * projector. What is drawn in 3-D is left out; its own tests look at it. A change that is meant:
 * `npm run build && npm run browser -- looks.spec.ts --update-snapshots`, then look at each picture before it is kept.
 */
import { expect, type Locator, type Page, test } from '@playwright/test';

import { withoutWebGl } from './no-webgl.ts';

/** A Monday morning, so that days on cards and records stand still. */
const NOW = new Date('2027-03-01T08:00:00');

interface Look {
  name: string;
  path: string;
  /** What must be there before the picture is taken. */
  ready: (page: Page) => Promise<void>;
  /** What chance or the address of this machine decides. */
  mask?: (page: Page) => Locator[];
  flat?: true;
}

const heading =
  (name: string | RegExp) =>
  async (page: Page): Promise<void> =>
    expect(page.getByRole('heading', { name }).first()).toBeVisible();

const looks: readonly Look[] = [
  { name: 'home', path: '', ready: heading(/The bed you cannot see/) },
  { name: 'lesson', path: 'lessons/setting/', ready: heading('Setting') },
  {
    name: 'figure',
    path: 'lessons/what-the-ridges-are-for/',
    ready: async (page) => {
      const figure = page.getByRole('figure', { name: /Press only/ });
      await figure.scrollIntoViewIfNeeded();
      await figure.getByRole('slider').fill('85');
      await figure.getByRole('button', { name: /Set and pull/ }).click();
      await expect(figure.locator('dl.readings').first()).toContainText('The bed gave');
      await figure.evaluate((it) => it.scrollIntoView());
    },
  },
  {
    name: 'job',
    path: 'job/',
    ready: async (page) => expect(page.locator('[data-line="coverage"]')).toBeVisible({ timeout: 20_000 }),
  },
  {
    name: 'round',
    path: 'rounds/',
    ready: async (page) => expect(page.getByRole('button', { name: 'Begin' })).toBeVisible(),
    mask: (page) => [page.getByLabel('Round number')],
  },
  { name: 'question', path: 'rounds/#seed=7&items=5&mode=mixed', ready: heading('Question 1 of 5') },
  {
    name: 'bench',
    path: 'bench/#bed=1&comb=swirl&do=p200_0_0~s200_6_2_0_20',
    flat: true,
    ready: async (page) => {
      await page.getByRole('button', { name: 'Set the tile' }).click();
      await page.getByRole('button', { name: 'Pull the tile' }).click();
      await page.getByRole('button', { name: 'Pull without a guess' }).click();
      await expect(page.getByText(/Coverage\s\d+\s%/).first()).toBeVisible({ timeout: 20_000 });
    },
  },
  {
    name: 'eye',
    path: 'eye/',
    ready: async (page) => {
      await expect(page.getByText('Tile 1.')).toBeVisible({ timeout: 20_000 });
    },
    mask: (page) => [page.locator('figure canvas')],
  },
  {
    name: 'search',
    path: 'search/?q=coverage',
    ready: async (page) => expect(page.locator('main li a').first()).toBeVisible(),
  },
  {
    name: 'record',
    path: 'record/',
    ready: async (page) => {
      await expect(page.getByText('Nothing yet.')).toBeVisible();
      await expect(page.getByRole('button', { name: 'Ask the browser to keep it' })).toBeVisible();
    },
  },
  {
    name: 'review',
    path: 'review/',
    ready: async (page) => expect(page.getByText('Nothing has been learned yet')).toBeVisible(),
  },
  { name: 'terms', path: 'terms/', ready: heading('Terms') },
  {
    name: 'desk',
    path: 'desk/',
    ready: async (page) => {
      await page.getByLabel('Code of the round').fill('MILL-3');
      await page.getByRole('button', { name: 'Set this round' }).click();
      await expect(page.getByRole('img', { name: /Square code/ })).toBeVisible();
    },
    mask: (page) => [page.getByLabel('Link for the class'), page.getByRole('img', { name: /Square code/ })],
  },
  {
    name: 'hand-ins',
    path: 'desk/',
    ready: async (page) => {
      await page.getByLabel('Code of the round').fill('MILL-3');
      await page.getByRole('button', { name: 'Set this round' }).click();
      await page.getByRole('tab', { name: 'Hand-ins' }).click();
      await page.getByLabel('Paste lines of text').fill('What is no hand-in is told apart.');
      await page.getByRole('button', { name: 'Take these lines' }).click();
      await page.getByRole('tablist').evaluate((tabs) => tabs.scrollIntoView());
    },
  },
  {
    name: 'crew',
    path: 'crew/',
    ready: async (page) => {
      await page.getByLabel('Heated floors').check();
      await expect(page.getByText('Electrical heat under tile.')).toBeVisible();
    },
  },
  { name: 'sources', path: 'sources/#coverage.wet', ready: heading('Sources') },
];

const screens = [
  { on: 'phone', viewport: { width: 360, height: 800 }, colorScheme: 'light' },
  { on: 'laptop', viewport: { width: 1280, height: 800 }, colorScheme: 'dark' },
] as const;

async function see(page: Page, { name, path, ready, mask, flat }: Look, on: string): Promise<void> {
  await page.clock.setFixedTime(NOW);
  if (flat) await withoutWebGl(page);
  await page.goto(path);
  await ready(page);
  await page.evaluate(() => document.fonts.ready);
  await expect(page).toHaveScreenshot(`${name}-${on}.png`, {
    animations: 'disabled',
    caret: 'hide',
    mask: mask?.(page) ?? [],
  });
}

for (const { on, ...screen } of screens)
  test.describe(`on a ${on}`, () => {
    test.use({ ...screen, contextOptions: { reducedMotion: 'reduce' } });
    for (const look of looks) test(look.name, async ({ page }) => see(page, look, on));
  });

test.describe('on a projector', () => {
  test.use({ viewport: { width: 1920, height: 1080 }, contextOptions: { reducedMotion: 'reduce' } });
  test('home', async ({ page }) => see(page, looks[0] as Look, 'projector'));
  test('the wall', async ({ page }) =>
    see(
      page,
      {
        name: 'wall',
        path: 'bench/wall/',
        flat: true,
        ready: async () => {
          const next = page.getByRole('button', { name: 'Next' });
          await expect(page.getByText(/^Combed\./)).toBeVisible();
          await next.click();
          await expect(page.getByText(/^Set\./)).toBeVisible({ timeout: 20_000 });
          await next.click();
          await expect(page.getByText(/^Pulled\..*\d+\s%/)).toBeVisible({ timeout: 20_000 });
        },
      },
      'projector',
    ));
});
