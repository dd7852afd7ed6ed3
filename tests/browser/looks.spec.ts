/**
 * The look of each part, held by pictures: one on a phone, in the light, one on a laptop, in the dark, and the wall on a
 * projector. What is drawn in 3-D is left out; its own tests look at it. A change that is meant:
 * `npm run build && npm run browser -- looks.spec.ts --update-snapshots`, then look at each picture before it is kept.
 */
import { expect, type Page, test } from '@playwright/test';

import { withoutWebGl } from './no-webgl.ts';
import { type Look, looks } from './parts/looks.ts';

/** A Monday morning, so that days on cards and records stand still. */
const NOW = new Date('2027-03-01T08:00:00');

const screens = [
  { on: 'phone', viewport: { width: 360, height: 800 }, colorScheme: 'light' },
  { on: 'laptop', viewport: { width: 1280, height: 800 }, colorScheme: 'dark' },
] as const;

async function see(page: Page, { name, path, ready, mask, flat }: Look, on: string): Promise<void> {
  await page.clock.setFixedTime(NOW);
  if (flat) await withoutWebGl(page);
  await page.goto(path);
  await ready(page);
  await page.evaluate(() => document.fonts.ready);
  await expect(page).toHaveScreenshot(`${name}-${on}.png`, {
    animations: 'disabled',
    caret: 'hide',
    mask: mask?.(page) ?? [],
  });
}

for (const { on, ...screen } of screens)
  test.describe(`on a ${on}`, () => {
    test.use({ ...screen, contextOptions: { reducedMotion: 'reduce' } });
    for (const look of looks) test(look.name, async ({ page }) => see(page, look, on));
  });

test.describe('on a projector', () => {
  test.use({ viewport: { width: 1920, height: 1080 }, contextOptions: { reducedMotion: 'reduce' } });
  test('home', async ({ page }) => see(page, looks[0] as Look, 'projector'));
  test('the wall', async ({ page }) =>
    see(
      page,
      {
        name: 'wall',
        path: 'bench/wall/',
        flat: true,
        ready: async () => {
          const next = page.getByRole('button', { name: 'Next' });
          await expect(page.getByText(/^Combed\./)).toBeVisible();
          await next.click();
          await expect(page.getByText(/^Set\./)).toBeVisible({ timeout: 20_000 });
          await next.click();
          await expect(page.getByText(/^Pulled\..*\d+\s%/)).toBeVisible({ timeout: 20_000 });
        },
      },
      'projector',
    ));
});
