import { expect, test } from '@playwright/test';
import { accessible } from './watch.ts';

test('guess a pulled tile by keyboard, see the count, the bias and the next one', async ({ page }) => {
  await page.goto('eye/');
  const slider = page.locator('#eye-guess');
  await expect(slider).toBeEnabled({ timeout: 20_000 });
  await accessible(page);
  await slider.focus();
  await page.keyboard.press('End');
  await page.getByRole('button', { name: 'Count it' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.truth')).toContainText('You said 100 %');
  await expect(page.locator('.told')).toContainText(/too hopeful|Spot on/);
  await accessible(page);
  await page.getByRole('button', { name: 'Next tile' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('figcaption').first()).toContainText('Tile 2');
  await page.reload();
  // What was judged is kept, and the next tile is a fresh one.
  await expect(page.locator('figcaption').first()).toContainText('Tile 2');
  await expect(page.getByText(/^[01] of 1$/)).toBeVisible();
});

test('the sheet prints its twelve tiles on one page and the key on the next, Letter and A4', async ({ page }) => {
  await page.goto('eye/');
  await page.getByRole('button', { name: 'Print a sheet with key' }).click();
  await expect(page.getByRole('button', { name: 'Print', exact: true })).toBeEnabled({ timeout: 45_000 });
  await expect(page.locator('.sheet-tiles figure')).toHaveCount(12);
  for (const format of ['Letter', 'A4'] as const) {
    const paper = (await page.pdf({ format })).toString('latin1');
    expect(paper.match(/\/Type\s*\/Page[^s]/g), format).toHaveLength(2);
  }
});
