import { expect, test } from '@playwright/test';

import { servePart } from './parts/serve-part.ts';

/** Every kind of bed that the page makes has been shown once by then. */
const FIRST = 60;
/** Bytes: a tenth of what two hundred small beds hold in typed arrays alone, were they kept. */
const HEAP = 2e6;

test('two hundred beds leave no more behind than the first of each kind', async ({ page }) => {
  test.setTimeout(120_000);
  const part = await servePart('picture-page.ts');
  try {
    await page.goto(part.url);
    await page.waitForFunction(() => 'showBeds' in window);
    const wire = await page.context().newCDPSession(page);
    const heap = async (): Promise<{ usedSize: number; backingStorageSize: number }> => {
      await wire.send('HeapProfiler.collectGarbage');
      return wire.send('Runtime.getHeapUsage');
    };
    const first = await page.evaluate((count) => window.showBeds(count), FIRST);
    const before = await heap();
    const after = await page.evaluate((count) => window.showBeds(count), 240);
    const now = await heap();
    expect(after.pictures - first.pictures).toBeGreaterThanOrEqual(240);
    expect([after.geometries, after.textures]).toEqual([first.geometries, first.textures]);
    expect(first.geometries).toBeGreaterThan(5);
    expect(now.usedSize - before.usedSize).toBeLessThan(HEAP);
    expect(now.backingStorageSize - before.backingStorageSize).toBeLessThan(HEAP);
    expect(page.workers()).toHaveLength(1);
  } finally {
    await part.stop();
  }
});
