import { readFile } from 'node:fs/promises';

import AxeBuilder from '@axe-core/playwright';
import { expect as expectSoon, test, type Page } from '@playwright/test';

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
  test.setTimeout(180_000);
  test.use({ viewport: { width: 900, height: 700 } });

  test('work by buttons raises coverage, is listed, and can be taken back', async ({ page }) => {
    await page.goto(SMALL);
    await pull(page);
    const before = Number.parseInt((await coverage(page).textContent()) ?? '', 10);
    await page.getByRole('button', { name: 'Slide across the ridges' }).click();
    await expect(page.getByRole('list', { name: 'What was done' }).getByRole('listitem')).toHaveCount(2);
    await expect
      .poll(async () => Number.parseInt((await coverage(page).textContent()) ?? '0', 10))
      .toBeGreaterThan(before);
    await page.getByRole('button', { name: /^Take back: Slide/ }).click();
    await expect(coverage(page)).toHaveText(`${before} %`);
  });

  test('the history is scrubbed by keys and tells where it stands', async ({ page }) => {
    await page.goto(SMALL);
    await pull(page);
    const history = page.getByRole('slider', { name: 'Step through what happened' });
    await history.press('Home');
    await expect(page.getByText(/Picture 1 of \d+: combed/)).toBeVisible();
    await history.press('ArrowRight');
    await expect(page.getByText(/Picture 2 of \d+: laid.* To press it further .* takes [\d.]+ lbf/)).toBeVisible();
    await history.press('End');
    // 40 N of the hand and the tile's weight: 0.152² m² × 9 mm × 2300 kg/m³ × 9.80665 m/s² = 4.7 N; 44.7 N are 10 lbf.
    await expect(page.getByText(/Push with 9 lbf\. On the tile: 10 lbf\. To press it further/)).toBeVisible();
  });

  test('shut-in air is shown with its pressure: columns, numbers on the map, a table', async ({ page }) => {
    await page.goto(`${SMALL}&comb=swirl`);
    await pull(page);
    await page.getByText('Shut-in air, pocket by pocket').click();
    const table = page.getByRole('table', { name: /pockets of shut-in air|largest of/ });
    await expect(table.getByRole('row').nth(1)).toHaveText(/^1.*in²[\d.]+ psi$/);
    await page.getByRole('button', { name: 'See through' }).click();
    await expect(page.getByText(/Columns stand where air is shut in.*0\.15 psi/)).toBeVisible();
    await expect(page.getByText('You had looked into the bed before')).toHaveCount(0);
  });

  test('guess, truth and the reasons as a table with bars', async ({ page }) => {
    await page.goto(`${SMALL}&bow=2`);
    await pull(page);
    await expect(page.getByText(/^You said 70 %/)).toBeVisible();
    const reasons = page.getByRole('table', { name: /one thing changed at a time/ });
    await expect(reasons.getByRole('row', { name: /A flat tile/ })).toBeVisible({ timeout: 90_000 });
    await expect(page.getByText(/What would have helped most|No single change/)).toBeVisible();
  });

  test('two beds side by side differ in one thing, with both numbers', async ({ page }) => {
    await page.goto(SMALL);
    await pull(page);
    await page.getByRole('button', { name: 'swirled' }).click();
    await expect(page.getByText('They differ in one thing.')).toBeVisible();
    const table = page.getByRole('table', { name: 'What differs' });
    await expect(table.getByRole('row', { name: /Coverage \d+ % \d+ %/ })).toBeVisible({ timeout: 60_000 });
  });

  test('a curve of one control comes from runs, with a table behind it', async ({ page }) => {
    await page.goto(SMALL);
    await page.getByLabel('Control', { exact: true }).selectOption('age');
    await page.getByRole('button', { name: 'Draw the curve' }).click();
    await page.getByText('The curve as a table').click({ timeout: 120_000 });
    await expect(page.getByRole('table', { name: 'Minutes since combing' }).getByRole('row')).toHaveCount(10);
  });

  test('the cut says the gap, the ridges and the air', async ({ page }) => {
    await page.goto(SMALL);
    await expect(page.getByText(/ridges stand up to/).last()).toBeVisible();
    await pull(page);
    await page.getByRole('checkbox', { name: 'Cut the bed open' }).check();
    await page.getByRole('slider', { name: 'Where the cut stands' }).press('End');
    await expect(page.getByText(/Along the cut the gap is/).last()).toBeVisible();
    await expect(page.getByRole('button', { name: 'Cut', exact: true })).toBeVisible();
  });

  test('figures and picture can be kept, and the address is the bed', async ({ page }) => {
    await page.goto(SMALL);
    await pull(page);
    const figures = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the figures' }).click();
    const kept = JSON.parse(await readFile(await (await figures).path(), 'utf8')) as { link: string; result: object };
    expect(kept.link).toContain('bed=1');
    expect(kept.result).toHaveProperty('coverage');
    const picture = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the picture' }).click();
    const png = await readFile(await (await picture).path());
    expect(png.subarray(1, 4).toString()).toBe('PNG');
    expect(png.length).toBeGreaterThan(20_000);
    await page.getByLabel('How it is drawn').selectOption('fan', { force: true });
    await expect.poll(() => page.url()).toContain('comb=fan');
  });

  test('at 360 pixels nothing runs over the side, and no fault of access', async ({ page }) => {
    await page.setViewportSize({ width: 360, height: 800 });
    await page.goto(SMALL);
    await pull(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  });
});
