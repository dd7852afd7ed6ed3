import { expect, test, type Page } from '@playwright/test';

/** Holds back the pages' scripts until let go: a slow network at its worst moment. */
async function holdScripts(page: Page): Promise<() => void> {
  let letGo: () => void = () => undefined;
  const gone = new Promise<void>((resume) => (letGo = resume));
  await page.route(/_astro\/.*\.js/, async (route) => {
    await gone;
    await route.continue();
  });
  return letGo;
}

test('a tab of the desk clicked before its script has come opens when it has', async ({ page }) => {
  const letGo = await holdScripts(page);
  await page.goto('desk/', { waitUntil: 'commit' });
  await page.getByRole('tab', { name: 'Hands-on' }).click();
  await expect(page.locator('astro-island[aria-busy]')).toBeVisible();
  letGo();
  await expect(page.getByRole('button', { name: 'Judge and keep' })).toBeVisible();
  await expect(page.locator('astro-island[aria-busy]')).toHaveCount(0);
});

test('what is typed and ticked before the script has come is taken over', async ({ page }) => {
  const letGo = await holdScripts(page);
  await page.goto('crew/', { waitUntil: 'commit' });
  await page.getByLabel('Shop', { exact: true }).fill('Mill Street Tile');
  await page.getByLabel('Heated floors').check(); // a tick shows at once, as everywhere
  letGo();
  await expect(page.getByText('Electrical heat under tile.')).toBeVisible();
  await expect(page.getByLabel('Heated floors')).toBeChecked();
  await page.reload();
  await expect(page.getByLabel('Shop', { exact: true })).toHaveValue('Mill Street Tile');

  const again = await holdScripts(page);
  await page.goto('search/', { waitUntil: 'commit' });
  await page.getByRole('searchbox').fill('slaking');
  again();
  await expect(page.getByRole('link', { name: /Mixing/ }).first()).toBeVisible();
});

test('a round begun before its script has come begins when it has', async ({ page }) => {
  const letGo = await holdScripts(page);
  await page.goto('rounds/', { waitUntil: 'commit' });
  await page.getByRole('button', { name: 'Begin' }).click();
  letGo();
  await expect(page.getByText(/Question 1/).first()).toBeVisible();
});

test('a fold opened before the script has come stays open', async ({ page }) => {
  const letGo = await holdScripts(page);
  await page.goto('bench/', { waitUntil: 'commit' });
  const fold = page.locator('details', { has: page.locator('summary', { hasText: 'Mortar' }) }).first();
  await fold.locator('summary').first().click();
  await expect(fold).toHaveAttribute('open');
  letGo();
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  await expect(page.getByText(/Of the back|Combed|Pick how/).first()).toBeVisible();
  await expect(fold).toHaveAttribute('open');
  await expect(page.getByLabel('How the mix behaves').or(page.getByText('Stiffness').first()).first()).toBeVisible();
});
