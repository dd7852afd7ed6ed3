import { expect, test, type Locator, type Page } from '@playwright/test';

import { course } from '@lessons/course.ts';

/** The guesses of a page are made, so that every figure stands open. */
async function guessAll(page: Page): Promise<void> {
  for (const place of await page.locator('.live, .foretell').all()) {
    await place.scrollIntoViewIfNeeded();
    await expect(place.locator('xpath=ancestor-or-self::astro-island[1]')).not.toHaveAttribute('ssr');
    await place.getByRole('slider').first().fill('50');
    await place.getByRole('button', { name: 'That is my guess' }).click();
  }
  for (const live of await page.locator('.live').all())
    await expect(live.locator('.live-now')).toBeVisible({ timeout: 30_000 });
}

/** What a figure says in words: its caption, or the title and sentences about it. */
async function wordsOf(figure: Locator): Promise<string> {
  const caption = figure.locator('figcaption');
  if ((await caption.count()) > 0) return (await caption.textContent()) ?? '';
  const details = figure.locator('details', { hasText: 'In words' });
  return `${(await figure.locator('.plate-label').first().textContent()) ?? ''} ${(await details.textContent()) ?? ''}`;
}

/** Drawings that say nothing to a screen reader: they must be hidden from it, or named. */
const nameless = (figure: Locator): Promise<number> =>
  figure
    .locator('svg, canvas')
    .evaluateAll((drawings) => drawings.filter((one) => one.closest('[aria-hidden="true"], [role="img"][aria-label]') === null).length); // prettier-ignore

/** Things to press or move that the keyboard can't reach. */
const unreachable = (figure: Locator): Promise<string[]> =>
  figure
    .locator('input, select, button, summary, a[href], [onclick], [role="slider"], [role="button"]')
    .evaluateAll((all) =>
      all.filter((one) => (one as HTMLElement).tabIndex < 0).map((one) => one.outerHTML.slice(0, 80)),
    );

for (const { slug } of course)
  test(`${slug}: every figure has words, numbers in a table or list, keys, and a place on paper`, async ({ page }) => {
    test.setTimeout(120_000);
    await page.goto(`/lessons/${slug}/`);
    await guessAll(page);
    const figures = await page.locator('main figure.plate').all();
    expect(figures.length).toBeGreaterThan(0);
    for (const figure of figures) {
      await figure.scrollIntoViewIfNeeded();
      expect((await wordsOf(figure)).trim().length).toBeGreaterThan(60);
      // Numbers stand in a table; where a figure leads to causes and not to numbers, in a list.
      expect(await figure.locator('table, .causes, .message').count()).toBeGreaterThan(0);
      expect(await nameless(figure)).toBe(0);
      expect(await unreachable(figure)).toEqual([]);
      for (const slider of await figure.getByRole('slider').all()) {
        const before = await slider.inputValue();
        await slider.focus();
        await page.keyboard.press('ArrowLeft');
        await page.keyboard.press('ArrowRight');
        await page.keyboard.press('ArrowRight');
        const most = await slider.getAttribute('max');
        if (before !== most) expect(await slider.inputValue()).not.toBe(before);
      }
    }
    await page.emulateMedia({ media: 'print' });
    for (const figure of figures) {
      await expect(figure.locator('svg:visible, canvas:visible, table:visible').first()).toBeVisible();
      await expect(figure.locator('.no-print, button').first()).toBeHidden();
      expect(await figure.locator('table:visible, .causes:visible, .message:visible').count()).toBeGreaterThan(0);
    }
  });

test('a live figure that nobody has started prints what the bed gave', async ({ page }) => {
  await page.goto('/lessons/what-the-ridges-are-for/');
  await page.emulateMedia({ media: 'print' });
  const figure = page.locator('figure.live-plate');
  await expect(figure.getByRole('row', { name: /as it begins \d+ %/ })).toBeVisible();
  await expect(figure.getByRole('row', { name: /Hands: move across \d+ %/ })).toBeVisible();
});
