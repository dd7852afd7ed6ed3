import { expect, test, type Page } from '@playwright/test';
import { withoutWebGl } from './no-webgl.ts';
import { accessible } from './watch.ts';

/** A key is heard once the page's script has come. */
async function open(page: Page): Promise<void> {
  await page.goto('bench/wall/');
  await expect(page.getByRole('heading', { name: 'Straight or swirled?' })).toBeVisible();
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
}

/** Through the first pair to its two numbers, on to others and back. */
async function walk(page: Page): Promise<void> {
  await page.keyboard.press('ArrowRight');
  await expect(page.getByText(/Hands up: which back is fuller/)).toBeVisible();
  await page.keyboard.press('PageDown');
  await expect(page.getByText(/Straight: \d+\s%\. Swirled: \d+\s%\./)).toBeVisible({ timeout: 30_000 });
  await accessible(page);
  await page.keyboard.press('3');
  await expect(page.getByRole('heading', { name: /bowed tile/ })).toBeVisible();
  await expect(page.getByText('stands 5/64 in higher')).toBeVisible();
  await expect(page.locator('figcaption').getByText('1/2 × 1/2 in')).toBeVisible();
  await page.keyboard.press('ArrowLeft');
  await expect(page.getByRole('heading', { name: 'Slide across or along?' })).toBeVisible();
}

// A small picture is quick without a graphics card.
test.describe('the bench on the wall', () => {
  test.use({ viewport: { width: 640, height: 420 }, contextOptions: { reducedMotion: 'reduce' } });

  test('does the same with pictures from above where there is no WebGL', async ({ page }) => {
    await withoutWebGl(page);
    // A wall is white for a reader of the dark theme too, with all that stands on it.
    await page.emulateMedia({ colorScheme: 'dark' });
    await open(page);
    await walk(page);
    await expect(page.locator('figure canvas')).toHaveCount(2);
  });

  test('goes on and back by keys, tells when the graphics are lost, and draws again when they are back', async ({
    page,
  }) => {
    await open(page);
    await page.waitForFunction(() => {
      const canvas = document.querySelector<HTMLCanvasElement>('figure canvas');
      // Asked for before the page does, it would be of the wrong kind.
      return canvas !== null && canvas.width !== 300 && canvas.getContext('webgl2') !== null;
    });
    await page.evaluate(() => {
      const lose = document.querySelector('canvas')?.getContext('webgl2')?.getExtension('WEBGL_lose_context');
      lose?.loseContext();
      setTimeout(() => lose?.restoreContext(), 1000);
    });
    await expect(page.getByText('The graphics were interrupted')).toBeVisible();
    await expect(page.getByText('The graphics were interrupted')).toBeHidden({ timeout: 30_000 });
    await walk(page);
    await expect(page.locator('figure canvas')).toHaveCount(1);
  });
});

test('each pair fits one screen of a projector: question, beds, numbers and reason', async ({ page }) => {
  const [first, second] = [
    { width: 1280, height: 720 },
    { width: 1920, height: 1080 },
  ];
  await page.setViewportSize(first);
  await withoutWebGl(page);
  await open(page);
  const reason = page.getByText(/^Pulled\.\s+.+: \d+\s%\. .+: \d+\s%\./);
  const fits = async ({ width, height }: typeof first): Promise<void> => {
    const box = (await reason.boundingBox())!;
    expect(box.y + box.height).toBeLessThanOrEqual(height);
    // The beds have at least two fifths of the screen, whatever is asked and told.
    for (const canvas of await page.locator('figure canvas').all())
      expect((await canvas.boundingBox())!.height).toBeGreaterThan(0.4 * height);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  };
  for (const key of ['1', '2', '3', '4', '5', '6']) {
    await page.keyboard.press(key);
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await expect(reason).toBeVisible({ timeout: 30_000 });
    for (const size of [first, second]) {
      await page.setViewportSize(size);
      await fits(size);
    }
  }
});
