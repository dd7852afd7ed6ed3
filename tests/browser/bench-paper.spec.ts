import { expect as expectSoon, test, type Page } from '@playwright/test';

import { withoutWebGl } from './no-webgl.ts';
import { pagesOf, picturesOf } from './parts/paper-pictures.ts';

/** Software graphics on a busy machine take their time. */
const expect = expectSoon.configure({ timeout: 30_000 });

const SMALL = 'bench/#bed=1&long=152&wide=152&nw=6.35&nd=6.35&nt=6.35&do=p40_0_0';
/** A long tile and all that can be said of a bed: the fullest sheet. */
const FULL =
  'bench/#bed=1&long=600&wide=100&comb=swirl&yield=700&age=12&butter=1&floor=1&floor2=1&twist=0.5&worn=2&yaw=12&bare=5&do=p200_0_0~s200_6_4_0_20~t1_4_100_0~v100_0.2_60_3~w200_1_2_20';

async function pull(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Set the tile' }).click();
  await page.getByRole('button', { name: 'Pull the tile' }).click();
  await page.getByRole('button', { name: 'Commit and pull' }).click();
  await expect(page.getByRole('definition').first()).toHaveText(/^\d+ %$/);
}

/** The sheet as the browser makes it for paper, held so that it can be looked at. */
async function held(page: Page): Promise<ReturnType<Page['locator']>> {
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  return page.locator('.bed-paper');
}

test.describe('the bench on paper', () => {
  test.setTimeout(180_000);
  test.use({ viewport: { width: 640, height: 560 } });

  test('is one sheet of set-up, picture, figures, section, map and address, on Letter and A4', async ({ page }) => {
    await page.goto(SMALL);
    await page.waitForFunction(() => document.querySelector('.stage')?.hasAttribute('data-quality'));
    await pull(page);
    for (const format of ['Letter', 'A4'] as const) {
      const paper = await page.pdf({ format });
      expect(pagesOf(paper), format).toBe(1);
      // Picture, section and map, at about 200 dots to the inch, none of them blank.
      const pictures = picturesOf(paper).filter(({ width }) => width > 700);
      expect(pictures.length, format).toBeGreaterThanOrEqual(3);
      for (const { tones } of pictures) expect(tones, format).toBeGreaterThan(20);
    }
    // What was printed is gone from the page again.
    await expect(page.locator('.bed-paper')).toHaveCount(0);
    const sheet = await held(page);
    await expect(sheet).toContainText('6 in × 6 in');
    await expect(sheet).toContainText('1/4 × 1/4 in square');
    await expect(sheet).toContainText('Push with 9 lbf');
    await expect(sheet).toContainText(/Coverage\s+\d+ %/);
    await expect(sheet).toContainText(/You said 70 %; it is \d+ %/);
    await expect(sheet).toContainText(/Along the cut the gap is/);
    await expect(sheet).toContainText(/Touched, not bonded/);
    await expect(sheet).toContainText('do=p40_0_0');
    await expect(sheet.getByRole('img', { name: /This bed again/ })).toBeVisible();
    for (const control of await page.locator('button, input, select, summary, [role="application"]').all())
      await expect(control).toBeHidden();
    // The tile is seen in the picture: clay, glaze and mortar, not one tone on bare paper.
    const tones = await sheet.locator('canvas.picture').evaluate((canvas) => {
      const pen = (canvas as HTMLCanvasElement).getContext('2d')!;
      const { data } = pen.getImageData(0, 0, pen.canvas.width, pen.canvas.height);
      const seen = new Map<number, number>();
      for (let at = 0; at < data.length; at += 4)
        if (data[at + 3]! > 200) seen.set(data[at]! >> 4, (seen.get(data[at]! >> 4) ?? 0) + 1);
      return [...seen.values()].filter((count) => count > 200).length;
    });
    expect(tones).toBeGreaterThanOrEqual(5);
  });

  test('a curve that was drawn follows on a second sheet, and not once another bed is on the bench; of two beds it is told which is which', async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
    await page.goto(SMALL);
    await page.waitForFunction(() => document.querySelector('.stage')?.hasAttribute('data-quality'));
    await pull(page);
    await page.getByRole('button', { name: 'Draw the curve' }).click();
    await expect(page.getByText('The curve as a table')).toBeVisible({ timeout: 90_000 });
    for (const format of ['Letter', 'A4'] as const) expect(pagesOf(await page.pdf({ format })), format).toBe(2);
    await test.step('after the sheet, with its figures and the names of both its sides', async () => {
      const sheet = (await (await held(page)).boundingBox())!;
      const curve = page.locator('.sweep svg');
      expect((await curve.boundingBox())!.y).toBeGreaterThanOrEqual(sheet.y + sheet.height);
      await expect(curve.getByText('100 %')).toBeVisible();
      await expect(curve.getByText('Bow along the length')).toBeVisible();
      await expect(page.locator('.sweep tbody tr')).toHaveCount(9);
      await page.evaluate(() => dispatchEvent(new Event('afterprint')));
      await page.emulateMedia({ media: null });
    });
    await page.getByRole('button', { name: 'swirled' }).click();
    await expect(page.getByText('They differ in one thing')).toBeVisible();
    await expect(page.getByText('This curve is of the one before')).toBeVisible();
    expect(pagesOf(await page.pdf({ format: 'Letter' }))).toBe(1);
    // The picture is copied before the page is laid out for paper.
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    await expect(page.locator('.bed-paper')).toContainText(/The kept bed, left in the picture: \d+ %\..*Straight/);
  });

  test('the fullest bed still fits, without three dimensions', async ({ page }) => {
    await withoutWebGl(page);
    await page.goto(FULL);
    await pull(page);
    for (const format of ['Letter', 'A4'] as const) expect(pagesOf(await page.pdf({ format })), format).toBe(1);
  });

  test('a bed that is not pulled yet prints without giving its back away', async ({ page }) => {
    await withoutWebGl(page);
    await page.goto(SMALL);
    await page.getByRole('button', { name: 'Set the tile' }).click();
    await expect(page.getByRole('button', { name: 'Pull the tile' })).toBeVisible();
    const sheet = await held(page);
    await expect(sheet).toContainText('Not pulled yet');
    await expect(sheet).not.toContainText(/\d %/);
    await expect(sheet.locator('canvas.map')).toHaveCount(0);
    expect(pagesOf(await page.pdf({ format: 'Letter' }))).toBe(1);
  });
});
