import { expect as expectSoon, test, type Page } from '@playwright/test';
import { withoutWebGl } from './no-webgl.ts';
import { accessible } from './watch.ts';

/** Software graphics on a busy machine take their time. */
const expect = expectSoon.configure({ timeout: 30_000 });

/** Sets, guesses and pulls as a newcomer does: by the one main button of each step. */
async function set(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Set the tile' }).click();
  // The number waits for the guess.
  await expect(page.getByRole('button', { name: 'Pull the tile' })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'The back of the tile' })).toBeHidden();
  await expect(page.getByRole('heading', { name: 'What came of it' })).toBeHidden();
}
async function pullWithGuess(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Pull the tile' }).click();
  await page.getByRole('slider', { name: 'My guess of the coverage' }).fill('60');
  await page.getByRole('button', { name: 'Commit and pull' }).click();
}

test.describe('setting bench', () => {
  test.setTimeout(180_000);
  test.use({ viewport: { width: 900, height: 700 } });

  test('a newcomer combs, sets, guesses and pulls within a minute; no accessibility fault, combed and pulled', async ({
    page,
  }) => {
    await page.goto('bench/');
    await expect(page.getByText('Pick how the mortar is combed')).toBeVisible();
    await accessible(page);
    const from = Date.now();
    await set(page);
    await pullWithGuess(page);
    await expect(page.getByRole('heading', { name: 'What came of it' })).toBeVisible();
    await expect(page.getByRole('definition').first()).toHaveText(/^\d+ %$/);
    expect(Date.now() - from).toBeLessThan(60_000);
    await expect(page.getByRole('heading', { name: 'The back of the tile' })).toBeVisible();
    await expect(page.getByText(/Of the back, \d+ % is bonded/).first()).toBeVisible();
    await accessible(page);
  });

  test('without WebGL the bed is shown from above; a bed comes by link, and a bad link is refused in a sentence', async ({
    page,
  }) => {
    await withoutWebGl(page);
    await page.goto('bench/#bed=1&comb=swirl&bow=1.5');
    await expect(page.getByText('draws no three-dimensional picture')).toBeVisible();
    await expect(page.getByLabel('How it is drawn')).toHaveValue('swirl');
    await set(page);
    // The button that was pressed is gone: the keys go on from what the new step says.
    const told = page.getByRole('region', { name: 'The job in four steps' }).getByRole('paragraph');
    await expect(told).toBeFocused();
    await expect(told).toContainText('The tile is down');
    await page.keyboard.press('Tab');
    await expect(page.getByRole('button', { name: 'Pull the tile' })).toBeFocused();
    await test.step('from the guess one goes back to work, by key and by button; the guess stays as it was', async () => {
      const guess = page.getByLabel('My guess of the coverage');
      await page.keyboard.press('Enter');
      await guess.fill('35');
      await guess.press('Escape');
      await expect(told).toBeFocused();
      await expect(told).toContainText('The tile is down');
      await page.getByRole('button', { name: 'Pull the tile' }).click();
      await expect(guess).toHaveValue('35');
      await page.getByRole('button', { name: 'Work the bed some more first' }).click();
      await expect(told).toBeFocused();
      await page.getByRole('button', { name: 'Pull the tile' }).click();
      // A bed that is worked again is another bed, and the guess waits for it.
      await page.getByRole('button', { name: 'Push', exact: true }).click();
      await expect(guess).toBeHidden();
      await expect(told).toContainText('Done to it so far: 2 things');
    });
    await pullWithGuess(page);
    await expect(told).toBeFocused();
    await expect(told).toContainText(/Coverage \d+ %; you said 60 %/);
    await expect(page.getByText(/Of the back, \d+ % is bonded/).first()).toBeVisible();
    await page.goto('bench/#bed=1&long=-3');
    await expect(page.getByRole('alert')).toContainText('tile.lengthMm');
  });
});
