import { expect, test } from '@playwright/test';

import { allRules } from '@sim/rules/rulebook.ts';

import { accessible, fits, watch } from './watch.ts';

test('every rule stands on the sources page under its own anchor, with its status', async ({ page }) => {
  const seen = watch(page);
  await page.goto('/sources/');
  // Asked of the page in one go: two hundred questions one by one took half a minute.
  const entries = await page.evaluate(
    (ids) =>
      ids.map((id) => {
        const entry = document.getElementById(id);
        return { id, status: entry?.dataset['status'], shown: entry?.querySelector('.status')?.checkVisibility() };
      }),
    allRules().map(({ id }) => id),
  );
  expect(entries).toEqual(allRules().map(({ id, source }) => ({ id, status: source.status, shown: true })));
  await accessible(page);
  await page.setViewportSize({ width: 360, height: 800 });
  await fits(page);
  seen.clean();
});

test('the list narrows by words and by status, and says how many are left', async ({ page }) => {
  await page.goto('/sources/');
  const all = allRules().length;
  await expect(page.getByText(`${all} of ${all} rules shown`)).toBeVisible();
  await page.getByRole('searchbox', { name: 'Find a rule' }).fill('lippage bow');
  await expect(page.locator('[id="coverage.dry"]')).toBeHidden();
  await expect(page.locator('[id="lippage.bow"]')).toBeVisible();
  await page.getByRole('searchbox', { name: 'Find a rule' }).fill('');
  await page.getByRole('combobox', { name: 'Show' }).selectOption('from-memory');
  const memory = allRules().filter((rule) => rule.source.status === 'from-memory').length;
  await expect(page.getByText(`${memory} of ${all} rules shown`)).toBeVisible();
});

test('a rule far down is reached by its link, and paper shows every rule', async ({ page }) => {
  await page.goto('/sources/#safety.lifting');
  const far = page.locator('[id="safety.lifting"]');
  await expect(far).toBeInViewport();
  await expect(far.locator('h3')).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  const shown = await page
    .locator('.source-entry')
    .evaluateAll((all) => all.filter((one) => getComputedStyle(one).contentVisibility === 'visible').length);
  expect(shown).toBe(allRules().length);
});
