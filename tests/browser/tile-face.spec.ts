import { expect, test } from '@playwright/test';

import { servePart } from './parts/serve-part.ts';

test('nothing shows through the tile’s face, from wherever one looks; what is left out throws no shadow; a thin bed far off covers its floor', async ({
  page,
}) => {
  test.setTimeout(120_000);
  const part = await servePart('face-page.ts');
  try {
    await page.goto(part.url);
    await page.waitForFunction(() => 'besideBed' in window);
    const eyes = await page.evaluate(() => window.specks());
    expect(Math.min(...eyes.map(({ face }) => face))).toBeGreaterThan(5000);
    expect(eyes.map(({ specks }) => specks)).toEqual(eyes.map(() => 0));
    const { bare, clear } = await page.evaluate(() => window.besideBed());
    expect(bare).toBeGreaterThan(100);
    expect(Math.abs(clear - bare)).toBeLessThanOrEqual(3);
    expect(await page.evaluate(() => window.bareOverThinBed())).toBeLessThan(0.01);
  } finally {
    await part.stop();
  }
});
