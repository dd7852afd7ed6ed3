import { expect, test } from '@playwright/test';

import { accessible, fits, watch } from './watch.ts';

const pages = ['reading-a-notch', 'mixing', 'combing', 'setting', 'pulling-a-tile', 'buttering-the-back', 'bowed-tile'];

for (const slug of pages)
  test(`${slug}: accessible, fits a phone and a desk, asks nothing of another host`, async ({ page }) => {
    const seen = watch(page);
    await page.goto(`/lessons/${slug}/`);
    await accessible(page);
    for (const width of [360, 1280]) {
      await page.setViewportSize({ width, height: 800 });
      await fits(page);
    }
    seen.clean();
  });

test('the numbers under a figure fit the narrowest phone, opened', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 800 });
  for (const slug of pages) {
    await page.goto(`/lessons/${slug}/`);
    await page.locator('.plate details.more').evaluateAll((all) => all.forEach((one) => one.setAttribute('open', '')));
    await fits(page);
  }
});

test('a worked example is of the tile that is sold where the reader works', async ({ page }) => {
  await page.goto('/lessons/combing/');
  const example = page.locator('.lesson .box').filter({ hasText: 'Worked example' });
  await expect(example.getByText('24 in', { exact: true })).toBeVisible();
  await page.getByRole('radio', { name: 'millimetres and metres' }).check({ force: true });
  await expect(example.getByText('600 mm', { exact: true })).toBeVisible();
  await expect(example.getByText('24 in', { exact: true })).toBeHidden();
});

test('a choice is asked for before its answer is shown, and then explained', async ({ page }) => {
  await page.goto('/lessons/reading-a-notch/');
  const form = page.locator('form.predict');
  await form.scrollIntoViewIfNeeded();
  await expect(form.getByText(/half the floor is ridge/)).toHaveCount(0);
  await form.getByRole('button', { name: 'This is my answer' }).click();
  await expect(form.getByText(/Choose one first/)).toBeVisible();
  await form.getByRole('radio', { name: 'The wide one' }).check();
  await form.getByRole('button', { name: 'This is my answer' }).click();
  await expect(form.getByText(/Not so\. The answer: Both leave the same/)).toBeVisible();
  await expect(form.getByText(/half the floor is ridge/)).toBeVisible();
});

test('the notch reader shows both equal pairs, and what a low blade does to the least bed', async ({ page }) => {
  await page.goto('/lessons/reading-a-notch/');
  const reader = page.locator('figure.notch-reader');
  await reader.scrollIntoViewIfNeeded();
  for (const pair of ['a V and a square', 'a narrow and a wide notch']) {
    await reader.getByRole('button', { name: pair }).click();
    await expect(reader.getByText(/^Both leave 0\.\d{3} in\.$/)).toBeVisible();
  }
  await reader.getByLabel('First trowel').selectOption({ label: '1/4 × 1/4 in square' });
  const angle = reader.getByLabel('Blade to the floor');
  await angle.fill('60');
  await expect(reader.locator('.reading').first()).toContainText('0.108 in');
  await angle.fill('45');
  await expect(reader.locator('.reading').first()).toContainText('under the least bed of 3/32 in');
});

test('the two-plate test names the mix, and the warp figure holds half bond back', async ({ page }) => {
  await page.goto('/lessons/mixing/');
  const patty = page.getByLabel('Width of the patty');
  await patty.scrollIntoViewIfNeeded();
  await patty.fill('80');
  await expect(page.getByText('stiff', { exact: true }).first()).toBeVisible();
  await patty.fill('130');
  await expect(page.getByText('slumps', { exact: true }).first()).toBeVisible();

  await page.goto('/lessons/bowed-tile/');
  const offset = page.getByLabel('Offset of the rows');
  await offset.scrollIntoViewIfNeeded();
  await expect(page.getByText(/needs an approved mock-up/)).toBeVisible();
  await offset.fill('0.33');
  await expect(page.getByText(/needs an approved mock-up/)).toHaveCount(0);
});

test('the class experiment compares what is typed, refuses nonsense in a sentence and loses nothing', async ({
  page,
}) => {
  const seen = watch(page);
  await page.goto('/lessons/setting/teach/');
  const first = page.getByLabel(/Mix 1, .* Pressed/).first();
  await first.scrollIntoViewIfNeeded();
  await accessible(page);
  await first.fill('lots');
  await expect(page.getByText(/“lots” is not a share\. Write a number from 0 to 100/)).toBeVisible();
  await expect(first).toHaveValue('lots');
  await first.fill('55 %');
  await expect(page.getByText(/is not a share/)).toHaveCount(0);
  await expect(page.getByText(/too few to say anything/)).toBeVisible();
  await page.reload();
  await expect(page.getByLabel(/Mix 1, .* Pressed/).first()).toHaveValue('55 %');
  await page.setViewportSize({ width: 360, height: 800 });
  await fits(page);
  seen.clean();
});
