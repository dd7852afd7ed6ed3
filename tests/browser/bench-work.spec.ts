import { expect as expectSoon, test, type Page } from '@playwright/test';

import { withoutWebGl } from './no-webgl.ts';
import { accessible } from './watch.ts';

/** Software graphics on a busy machine take their time. */
const expect = expectSoon.configure({ timeout: 30_000 });

/** A small tile keeps software graphics quick. */
const SMALL = 'bench/#bed=1&long=152&wide=152&nw=6.35&nd=6.35&nt=6.35&do=p40_0_0';
const coverage = (page: Page): ReturnType<Page['locator']> => page.getByRole('definition').first();

async function pull(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Set the tile' }).click();
  await page.getByRole('button', { name: 'Pull the tile' }).click();
  await page.getByRole('button', { name: 'Commit and pull' }).click();
  await expect(coverage(page)).toHaveText(/^\d+ %$/);
}

test.describe('working at the bench', () => {
  test.setTimeout(120_000);
  // Motion is watched elsewhere; here it would only be waited for.
  test.use({ viewport: { width: 640, height: 560 }, contextOptions: { reducedMotion: 'reduce' } });

  test('the history is scrubbed and tells the forces; work raises coverage, is listed, and can be taken back', async ({
    page,
  }) => {
    await withoutWebGl(page);
    await page.goto(SMALL);
    await pull(page);
    await test.step('the history is scrubbed by keys and tells where it stands', async () => {
      const history = page.getByRole('slider', { name: 'Step through what happened' });
      await history.press('Home');
      await expect(page.getByText(/Picture 1 of \d+: combed/)).toBeVisible();
      await history.press('ArrowRight');
      await expect(page.getByText(/Picture 2 of \d+: laid.* To press it further .* takes [\d.]+\slbf/)).toBeVisible();
      await history.press('End');
      // 40 N of the hand and the tile's weight: 0.152² m² × 9 mm × 2300 kg/m³ × 9.80665 m/s² = 4.7 N; 44.7 N are 10 lbf.
      await expect(page.getByText(/Push with 9\slbf\. On the tile: 10\slbf\. To press it further/)).toBeVisible();
    });
    await test.step('work by buttons', async () => {
      const before = Number.parseInt((await coverage(page).textContent()) ?? '', 10);
      await page.getByRole('button', { name: 'Slide across the ridges' }).click();
      await expect(page.getByRole('list', { name: 'What was done' }).getByRole('listitem')).toHaveCount(2);
      await expect
        .poll(async () => Number.parseInt((await coverage(page).textContent()) ?? '0', 10))
        .toBeGreaterThan(before);
      await page.getByRole('button', { name: /^Take back: Slide/ }).click();
      await expect(coverage(page)).toHaveText(`${before} %`);
    });
    await test.step('the address is the bed', async () => {
      await page.getByLabel('How it is drawn').selectOption('fan', { force: true });
      await expect.poll(() => page.url()).toContain('comb=fan');
    });
  });

  test('the cut and shut-in air in picture, words and table; at 360 pixels nothing runs over the side, and no fault of access', async ({
    page,
  }) => {
    await page.goto(`${SMALL}&comb=swirl`);
    await expect(page.getByText(/ridges stand up to/).last()).toBeVisible();
    await pull(page);
    await test.step('shut-in air is shown with its pressure: columns, numbers on the map, a table', async () => {
      await page.getByText('Shut-in air, pocket by pocket').click();
      const table = page.getByRole('table', { name: /pockets of shut-in air|largest of/ });
      await expect(table.getByRole('row').nth(1)).toHaveText(/^1.*in²[\d.]+ psi$/);
      await page.getByRole('button', { name: 'See through' }).click();
      await expect(page.getByText(/Columns stand where air is shut in.*0\.15 psi/)).toBeVisible();
      await expect(page.getByText('You had looked into the bed before')).toHaveCount(0);
    });
    await test.step('the cut says the gap, the ridges and the air', async () => {
      await page.getByRole('checkbox', { name: 'Cut the bed open' }).check();
      await page.getByRole('slider', { name: 'Where the cut stands' }).press('End');
      await expect(page.getByText(/Along the cut the gap is/).last()).toBeVisible();
      await expect(page.getByRole('button', { name: 'Cut', exact: true })).toBeVisible();
    });
    await test.step('on a phone', async () => {
      await page.setViewportSize({ width: 360, height: 800 });
      const pockets = page.getByRole('region', { name: 'Shut-in air, pocket by pocket' });
      expect(await pockets.evaluate((one) => one.scrollWidth - one.clientWidth)).toBeLessThanOrEqual(0);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
      await accessible(page);
    });
  });
});
