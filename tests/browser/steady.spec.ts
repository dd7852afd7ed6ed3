import { expect, test } from '@playwright/test';

import { servePart } from './parts/serve-part.ts';

/** Every kind of bed that the page makes has been shown once by then, and comes again after as many. */
const KINDS = 60;
const MORE = 200;
/** Bytes: half of what the frames alone of two hundred such beds hold, were they kept. */
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
    const first = await page.evaluate((count) => window.showBeds(count, 0), KINDS);
    const before = await heap();
    // So that the last of them is of the same kind as the last before.
    const from = KINDS - (MORE % KINDS);
    const after = await page.evaluate(([count, from]) => window.showBeds(count!, from!), [MORE, from]);
    const now = await heap();
    expect(after.pictures - first.pictures).toBeGreaterThanOrEqual(MORE);
    expect([after.geometries, after.textures]).toEqual([first.geometries, first.textures]);
    expect(first.geometries).toBeGreaterThan(5);
    expect(now.usedSize - before.usedSize).toBeLessThan(HEAP);
    expect(now.backingStorageSize - before.backingStorageSize).toBeLessThan(HEAP);
    expect(page.workers()).toHaveLength(1);
  } finally {
    await part.stop();
  }
});
