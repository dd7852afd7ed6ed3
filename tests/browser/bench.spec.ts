import AxeBuilder from '@axe-core/playwright';
import { expect as expectSoon, test, type Page } from '@playwright/test';
import { withoutWebGl } from './no-webgl.ts';

/** Software graphics on a busy machine take their time. */
const expect = expectSoon.configure({ timeout: 30_000 });

/** Combs, sets, guesses and pulls as a newcomer does: by the one main button of each step. */
async function pullWithGuess(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Set the tile' }).click();
  await page.getByRole('button', { name: 'Pull the tile' }).click();
  await page.getByRole('slider', { name: 'My guess of the coverage' }).fill('60');
  await page.getByRole('button', { name: 'Commit and pull' }).click();
}

test.describe('setting bench', () => {
  test('a newcomer combs, sets, guesses and pulls within a minute', async ({ page }) => {
    await page.goto('bench/');
    await expect(page.getByText('Pick how the mortar is combed')).toBeVisible();
    const from = Date.now();
    await pullWithGuess(page);
    await expect(page.getByRole('heading', { name: 'What came of it' })).toBeVisible();
    await expect(page.getByRole('definition').first()).toHaveText(/^\d+ %$/);
    expect(Date.now() - from).toBeLessThan(60_000);
    await expect(page.getByRole('heading', { name: 'The back of the tile' })).toBeVisible();
    await expect(page.getByText(/Of the back, \d+ % is bonded/).first()).toBeVisible();
  });

  test('the number waits for the guess', async ({ page }) => {
    await page.goto('bench/');
    await page.getByRole('button', { name: 'Set the tile' }).click();
    await expect(page.getByRole('heading', { name: 'The back of the tile' })).toBeHidden();
    await expect(page.getByRole('heading', { name: 'What came of it' })).toBeHidden();
  });

  test('no accessibility fault, combed and pulled', async ({ page }) => {
    await page.goto('bench/');
    const scan = async (): Promise<unknown[]> => (await new AxeBuilder({ page }).analyze()).violations;
    expect(await scan()).toEqual([]);
    await pullWithGuess(page);
    await expect(page.getByRole('heading', { name: 'What came of it' })).toBeVisible();
    expect(await scan()).toEqual([]);
  });

  test('a bed comes by link, and a bad link is refused in a sentence', async ({ page }) => {
    await page.goto('bench/#bed=1&comb=swirl&bow=1.5');
    await expect(page.getByLabel('How it is drawn')).toHaveValue('swirl');
    await page.goto('bench/#bed=1&long=-3');
    await expect(page.getByRole('alert')).toContainText('tile.lengthMm');
  });

  test('without WebGL the bed is shown from above', async ({ page }) => {
    await withoutWebGl(page);
    await page.goto('bench/');
    await expect(page.getByText('draws no three-dimensional picture')).toBeVisible();
    await pullWithGuess(page);
    await expect(page.getByText(/Of the back, \d+ % is bonded/).first()).toBeVisible();
  });
});
