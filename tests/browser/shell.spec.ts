import { expect, test } from '@playwright/test';

import { accessible, fits, watch } from './watch.ts';

const paths = [
  '/',
  '/lessons/',
  '/lessons/mixing/',
  '/lessons/mixing/teach/',
  '/terms/',
  '/eye/',
  '/desk/',
  '/crew/',
  '/no/such/page/',
];

for (const path of paths)
  test(`${path} stands on its own`, async ({ page }) => {
    const seen = watch(page);
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await accessible(page);
    await page.emulateMedia({ colorScheme: 'dark' });
    await page.reload();
    await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
    await accessible(page);
    for (const width of [360, 768, 1280, 1920]) {
      await page.setViewportSize({ width, height: 800 });
      await fits(page);
    }
    seen.clean();
  });

test('the units chosen hold on every page and in another tab', async ({ page, context }) => {
  await page.goto('/lessons/what-the-ridges-are-for/');
  const bed = page.locator('.box .measure').first();
  await expect(bed).toContainText('in');
  await page.getByRole('radio', { name: 'millimetres and metres' }).check({ force: true });
  await expect(bed.locator('.in-metric')).toBeVisible();
  await expect(bed.locator('.in-imperial')).toBeHidden();
  const other = await context.newPage();
  await other.goto('/');
  await expect(other.locator('html')).toHaveAttribute('data-units', 'metric');
  await expect(other.getByRole('radio', { name: 'millimetres and metres' })).toBeChecked();
  await other.getByRole('radio', { name: 'inches and feet' }).check({ force: true });
  await expect(page.locator('html')).toHaveAttribute('data-units', 'imperial');
});

test('the dark page is kept, and undone', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('switch', { name: 'Dark page' }).check({ force: true });
  await page.reload();
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
  await page.getByRole('switch', { name: 'Dark page' }).uncheck({ force: true });
  await page.reload();
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'light');
});

test('choices hold on the page where the browser keeps nothing', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('closed', 'SecurityError');
      },
    });
  });
  const seen = watch(page);
  await page.goto('/');
  await page.getByRole('radio', { name: 'millimetres and metres' }).check({ force: true });
  await expect(page.locator('html')).toHaveAttribute('data-units', 'metric');
  seen.clean();
});

test('the contents open on a phone by keyboard and lead to a part', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 800 });
  await page.goto('/');
  const toggle = page.getByRole('button', { name: 'Contents' });
  await toggle.focus();
  await page.keyboard.press('Enter');
  const link = page.getByRole('navigation', { name: 'Parts of the manual' }).getByRole('link', { name: 'Sources' });
  await expect(link).toBeVisible();
  await link.click();
  await expect(page).toHaveURL(/\/sources\/$/);
});

test('the wall profile comes by link and lasts through the visit', async ({ page }) => {
  await page.goto('/?wall');
  await expect(page.locator('html')).toHaveAttribute('data-wall', '');
  for (const path of ['/lessons/combing/', '/sources/', '/bench/', '/'])
    for (const width of [1024, 1280, 1920]) {
      await page.setViewportSize({ width, height: 800 });
      await page.goto(path);
      await fits(page);
    }
  await page.goto('/lessons/');
  await expect(page.locator('html')).toHaveAttribute('data-wall', '');
  await page.goto('/?wall=off');
  await expect(page.locator('html')).not.toHaveAttribute('data-wall');
});

test('without script the words, both systems’ numbers and the way on are still there', async ({ browser }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto('/lessons/what-the-ridges-are-for/');
  await expect(page.getByText('95 %').first()).toBeVisible();
  await expect(page.getByText(/What share of its back/)).toBeVisible();
  await context.close();
});
