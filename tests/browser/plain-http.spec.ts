import { expect, test } from '@playwright/test';

import { watch } from './watch.ts';

/**
 * A classroom's own machine serves the site over plain http, and there browsers withhold these (Secure Contexts, W3C;
 * seen in Chromium at an address of the local network).
 */
test.beforeEach(async ({ page }) => {
  await page.addInitScript(() => {
    delete (Crypto.prototype as Partial<Crypto>).randomUUID;
    for (const name of ['clipboard', 'mediaDevices', 'serviceWorker', 'locks', 'storage'])
      Reflect.deleteProperty(Navigator.prototype, name);
  });
});

test('without TLS a bed is still computed and its address told, and what is pulled by hand is kept', async ({
  page,
}) => {
  const watched = watch(page);
  await page.goto('bench/#bed=1&long=152&wide=152&bow=0&nw=6.35&nd=6.35&nt=6.35&do=p40_0_0');
  for (const name of ['Set the tile', 'Pull the tile', 'Commit and pull'])
    await page.getByRole('button', { name }).click();
  await expect(page.getByRole('button', { name: 'Save the figures' })).toBeEnabled();
  await page.getByRole('button', { name: 'Copy the link' }).click();
  await expect(page.getByText('The link is on the clipboard.')).toBeVisible();

  await page.goto('desk/');
  await page.getByRole('tab', { name: 'Hands-on' }).click();
  await page.getByLabel('Learner', { exact: true }).press('ControlOrMeta+V');
  await expect(page.getByLabel('Learner', { exact: true })).toHaveValue(/bench\/#bed=1&/);
  await page.getByLabel('Learner', { exact: true }).fill('Ada');
  await page.getByRole('button', { name: 'Judge and keep' }).click();
  await expect(page.getByRole('row', { name: /Ada/ })).toBeVisible();
  await page.reload();
  await page.getByRole('tab', { name: 'Hands-on' }).click();
  await expect(page.getByRole('row', { name: /Ada/ })).toBeVisible();

  await page.goto('record/');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  watched.clean();
});

test('without TLS the desk marks a link to be copied by hand and says that the camera cannot be used; lines can still be pasted', async ({
  page,
}) => {
  const watched = watch(page);
  await page.goto('desk/');
  await page.getByRole('button', { name: 'Set this round' }).click();
  await page.evaluate(() => (document.execCommand = () => false));
  await page.getByRole('button', { name: 'Copy the link' }).click();
  await expect(page.getByText(/^The clipboard is closed to this page\. The text in the box is marked/)).toBeVisible();
  const box = page.getByLabel('Link for the class');
  await expect(box).toBeFocused();
  expect(await box.evaluate((one: HTMLInputElement) => one.selectionEnd)).toBe((await box.inputValue()).length);
  await page.getByRole('tab', { name: 'Hand-ins' }).click();
  await page.getByRole('button', { name: 'Scan a square code' }).click();
  await expect(page.getByText(/^The camera cannot be used here: it needs a secure address/)).toBeVisible();
  await page.getByLabel('Paste lines of text').fill('rtb');
  await page.getByRole('button', { name: 'Take these lines' }).click();
  await expect(page.getByRole('table', { name: 'Not taken' })).toBeVisible();
  watched.clean();
});
