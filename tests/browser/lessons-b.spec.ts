import { expect, test, type Locator } from '@playwright/test';

import { accessible, fits, watch } from './watch.ts';

/** The island about a place has its script: before that a control would move and nothing follow. */
async function awake(place: Locator): Promise<void> {
  await place.scrollIntoViewIfNeeded();
  await expect(place.locator('xpath=ancestor-or-self::astro-island[1]')).not.toHaveAttribute('ssr');
}

const lessons = [
  'flat-first',
  'small-tile-and-mosaics',
  'under-boards-and-membranes',
  'wet-outdoors-heated',
  'large-tile-and-panels',
  'time-and-weather',
  'how-much-to-buy',
  'finding-the-cause',
];

for (const slug of lessons) {
  test(`${slug}: accessible, fits a phone, and so does its instructor page`, async ({ page }) => {
    const seen = watch(page);
    for (const path of [`/lessons/${slug}/`, `/lessons/${slug}/teach/`]) {
      await page.goto(path);
      await expect(page.locator('h1')).toHaveCount(1);
      await accessible(page);
      await page.setViewportSize({ width: 360, height: 800 });
      await fits(page);
      // Sources stand in the margin of a wide page; on a phone they would run into the text.
      await expect(page.locator('.note-source').filter({ visible: true })).toHaveCount(0);
      await page.setViewportSize({ width: 1280, height: 800 });
    }
    seen.clean();
  });
}

test('a guess comes before the figure, and is kept', async ({ page }) => {
  const seen = watch(page);
  await page.goto('/lessons/small-tile-and-mosaics/');
  const guess = page.locator('.foretell');
  await awake(guess);
  const verdicts = guess.getByText('No room for grout', { exact: false });
  await expect(verdicts).toBeHidden();
  await guess.getByRole('button', { name: 'That is my guess' }).click();
  await expect(guess.getByText('Move the slider to your guess first.')).toBeVisible();
  await guess.getByRole('slider', { name: /joint’s depth/ }).focus();
  for (let i = 0; i < 30; i += 1) await page.keyboard.press('ArrowRight');
  await guess.getByRole('button', { name: 'That is my guess' }).click();
  await expect(guess.getByText(/You said 30 %\. It is 7\d %\./)).toBeVisible();
  await expect(verdicts).toBeVisible();
  await awake(guess.locator('figure'));
  await accessible(page);

  // The figure answers to its controls: a shallower notch with a steeper blade leaves room for grout.
  await guess.getByLabel('Notch').selectOption('1-4-1-4-in-square');
  await guess.getByRole('radio', { name: '60°' }).check({ force: true });
  await expect(guess.getByText('The bed is whole and the joint keeps room for grout.')).toBeVisible();

  const kept = await page.evaluate(
    () =>
      new Promise<{ figure: string; guess: number }[]>((resolve) => {
        const opening = indexedDB.open('ridge-to-bed');
        opening.onsuccess = () => {
          const all = opening.result.transaction('predictions').objectStore('predictions').getAll();
          all.onsuccess = () => resolve(all.result as { figure: string; guess: number }[]);
        };
      }),
  );
  expect(kept).toMatchObject([{ figure: 'mosaic-rise', guess: 0.3 }]);
  seen.clean();
});

test('the straightedge finds the dip and lets a flat floor pass', async ({ page }) => {
  await page.goto('/lessons/flat-first/');
  const figure = page.locator('figure.plate', { hasText: 'A floor under a straightedge' });
  await awake(figure);
  await expect(figure.getByText('Not yet flat enough', { exact: false })).toBeVisible();
  await figure.getByLabel('Broad dip').fill('2');
  await figure.getByLabel('Trowel mark').fill('0');
  await expect(figure.getByText('this floor is flat enough', { exact: false })).toBeVisible();
  await page.getByRole('radio', { name: /[Mm]illimet/ }).check({ force: true });
  await expect(figure.getByText('3.2 mm').first()).toBeVisible();
});

test('signs lead to a cause, by keyboard', async ({ page }) => {
  await page.goto('/lessons/finding-the-cause/');
  const figure = page.locator('figure.plate', { hasText: 'From signs to causes' });
  await awake(figure);
  await figure.getByLabel('Where did the mortar stay?').selectOption('floor');
  await figure.getByLabel('What do the ridges look like?').selectOption('standing');
  await expect(figure.locator('.causes li').first()).toContainText('skinned');
  await figure
    .getByRole('group', { name: /Only cut tiles/ })
    .getByRole('radio', { name: 'Yes' })
    .focus();
  await page.keyboard.press('Space');
  await expect(figure.locator('.causes li').first()).toContainText('saw');
  await figure.getByRole('button', { name: 'Start again' }).click();
  await expect(figure.getByText('No cause yet', { exact: false })).toBeVisible();
});

test('on paper the figure stands there without a guess', async ({ page }) => {
  await page.goto('/lessons/how-much-to-buy/');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.foretell figure')).toBeVisible();
  await expect(page.locator('.foretell .figure-controls')).toBeHidden();
});
