import { expect as expectSoon, test, type Page } from '@playwright/test';

import { withoutWebGl } from './no-webgl.ts';

/** A bed on a busy machine takes its time. */
const expect = expectSoon.configure({ timeout: 15_000 });

const SMALL = 'bench/#bed=1&long=152&wide=152&nw=6.35&nd=6.35&nt=6.35&bow=0';
const fold = (page: Page, name: string): Promise<void> => page.locator('summary', { hasText: name }).first().click();
const address = (page: Page): ReturnType<typeof expect.poll<string>> =>
  expect.poll(() => decodeURIComponent(page.url()));

test.describe('further controls of the bench', () => {
  test.setTimeout(120_000);
  test.use({ viewport: { width: 1000, height: 600 } });
  test.beforeEach(async ({ page }) => {
    // Controls are the same beside the flat picture, which is drawn at once.
    await withoutWebGl(page);
    await page.goto(SMALL);
    await page.getByText('mm', { exact: true }).first().click();
  });

  test('tile and floor: what is asked is in the address; what cannot be is told in a sentence and stays as typed', async ({
    page,
  }) => {
    await test.step('a size of one’s own and pieces on a sheet', async () => {
      await fold(page, 'Tile');
      await fold(page, 'Another size');
      const length = page.getByLabel('Length', { exact: true });
      await length.fill('180');
      await length.press('Enter');
      await address(page).toContain('long=180&');
      await length.fill('as long as it takes');
      await length.press('Enter');
      await expect(page.getByText('“as long as it takes” is not a length')).toBeVisible();
      await expect(length).toHaveValue('as long as it takes');
      await length.fill('9000');
      await length.press('Enter');
      await expect(page.getByText(/^Length is 9000: .*3300 mm/)).toBeVisible();
      await address(page).toContain('long=180&');
      await page.getByLabel('Pieces along the length').fill('2');
      await address(page).toContain('pieces=2_1_3');
      await page.getByLabel('Joint between pieces').fill('5');
      await address(page).toContain('pieces=2_1_5');
    });
    await test.step('surfaces as a straightedge read them take the place of bow and twist', async () => {
      await fold(page, 'The back as a straightedge');
      const along = page.getByLabel('Along the middle').first();
      await along.fill('0, 0.8, 0');
      await along.press('Enter');
      await address(page).toContain('read=a0_0.8_0');
      await expect(page.getByLabel('Bow along the length')).toBeHidden();
      await along.fill('0, 99, 0');
      await along.press('Enter');
      await expect(
        page.getByText('Along the middle, reading 2, is 99: give a number from −25 to 25 mm.'),
      ).toBeVisible();
      for (const [typed, says] of [
        ['0, high, 0', 'Along the middle, reading 2, cannot be read, for “high” is not a length: write it like 0, 0.8'],
        ['0, , 0', 'Along the middle, reading 2, is empty: write it like 0, 0.8'],
        ['1', 'Along the middle has 1 reading: give a list of 2 to 41.'],
      ] as const) {
        await along.fill(typed);
        await along.press('Enter');
        await expect(page.getByText(says)).toBeVisible();
        await expect(along).toHaveValue(typed);
      }
      // The bed stays by what could be read, and the line of it comes back.
      await address(page).toContain('read=a0_0.8_0');
      // A fold that was opened stays so, whatever else changes.
      await page.getByText('in', { exact: true }).first().click();
      await expect(along).toBeVisible();
      await page.getByText('mm', { exact: true }).first().click();
      await page.getByRole('button', { name: 'Forget the readings' }).click();
      await expect(along).toBeVisible();
      await expect(along).toHaveValue('');
      await expect(page.getByLabel('Bow along the length')).toBeVisible();
    });
    await test.step('relief by its shape', async () => {
      await fold(page, 'Relief in the back');
      await page.getByLabel('Shape', { exact: true }).selectOption('dots');
      await page.getByLabel('Depth of the hollows').fill('0.6');
      await address(page).toContain('back=dots_25_0.6_0_0.3');
      await expect(page.getByText(/On average 0\.56 mm deep/)).toBeVisible();
      await page.getByLabel('Shape', { exact: true }).selectOption('By its mean depth');
      await address(page).toContain('relief=0.6');
    });
    await test.step('the floor out of flat, and a blade turned off square', async () => {
      await fold(page, 'Floor');
      await page.getByLabel('Twist of the floor').fill('1.5');
      await page.getByLabel('Blade turned off square').fill('30');
      await address(page).toContain('floor3=1.5&');
      await address(page).toContain('yaw=30');
    });
  });

  test('mortar: weather hastens the skin, a test gives the stiffness or is refused, and a link brings both back', async ({
    page,
  }) => {
    await fold(page, 'Mortar');
    await fold(page, 'Weather');
    await page.getByLabel('Wind').selectOption('Windy');
    await expect(page.getByText(/Here the skin takes two thirds of the hold in \d+ min/)).toBeVisible();
    await address(page).toMatch(/weather=\d+_windy_false_middling/);
    await fold(page, 'Stiffness by a test');
    await page.getByLabel('Test', { exact: true }).selectOption('twoPlates');
    await expect(page.getByText(/That is a yield stress of \d+ Pa/)).toBeVisible();
    await page.getByLabel('Width of the patty').fill('110');
    await address(page).toContain('patty=2_50_110');
    const link = page.url();
    await page.goto('about:blank');
    await page.goto(link);
    await fold(page, 'Mortar');
    await expect(page.getByLabel('Width of the patty')).toHaveValue('110');
    await expect(page.getByLabel('Wind')).toHaveValue('windy');
    await test.step('a patty too thick for the test is refused in a sentence', async () => {
      await page.getByLabel('Mortar in the lump').fill('100');
      await page.getByLabel('Width of the patty').fill('60');
      await expect(page.getByText(/a patty too thick for this test/)).toBeVisible();
      // The knob of what was refused goes back to what is in force.
      await expect(page.getByLabel('Width of the patty')).not.toHaveValue('60');
    });
  });
});
