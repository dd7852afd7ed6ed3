import { expect, test } from '@playwright/test';

import { servePart } from './parts/serve-part.ts';

test('nothing of the bed shows through the face of the tile, from wherever one looks', async ({ page }) => {
  test.setTimeout(120_000);
  const part = await servePart('face-page.ts');
  try {
    await page.goto(part.url);
    await page.waitForFunction(() => 'specks' in window);
    const eyes = await page.evaluate(() => window.specks('light'));
    expect(Math.min(...eyes.map(({ face }) => face))).toBeGreaterThan(5000);
    expect(eyes.map(({ specks }) => specks)).toEqual(eyes.map(() => 0));
  } finally {
    await part.stop();
  }
});
