import { expect, test } from '@playwright/test';
import { accessible, fits } from './watch.ts';

test('a card for a helper: picked, signed, kept, printed on one page', async ({ page }) => {
  await page.goto('crew/');
  await page.getByLabel('Shop', { exact: true }).fill('Mill Street Tile');
  await page.getByLabel('Helper', { exact: true }).fill('Jo Lind');
  await page.getByLabel('Heated floors').check();
  await expect(page.getByText('Electrical heat under tile.')).toBeVisible();
  await page.getByLabel(/^Mixes a batch.*Seen by$/).fill('A. Foreman');
  await page.getByLabel(/^Mixes a batch.*On$/).fill('2026-12-03');
  await page.reload();
  await expect(page.getByLabel(/^Mixes a batch.*Seen by$/)).toHaveValue('A. Foreman');
  await expect(page.getByText('(by 2027-03-03)')).toHaveCount(0); // only the next eight are listed
  for (const format of ['Letter', 'A4'] as const)
    expect((await page.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page[^s]/g)).toHaveLength(1);
});

for (const width of [360, 1280])
  test(`the crew card is accessible at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    await page.goto('crew/');
    await page.getByLabel('Large tile and planks').check();
    await accessible(page);
    await fits(page);
    // Nor does the card itself run over its side, with all that is filled in on it.
    const over = await page.locator('.card').evaluate((card) => card.scrollWidth - card.clientWidth);
    expect(over).toBeLessThanOrEqual(0);
  });

test('the page on what stays where is accessible, and the desk talks to no other host', async ({ page }) => {
  const hosts = new Set<string>();
  page.on('request', (request) => hosts.add(new URL(request.url()).host));
  await page.goto('privacy/');
  await accessible(page);
  await page.goto('desk/');
  await page.getByRole('button', { name: 'Set this round' }).click();
  await expect(page.getByRole('img', { name: /Square code/ })).toBeVisible();
  expect([...hosts]).toEqual([new URL(page.url()).host]);
});
