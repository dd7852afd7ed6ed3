import { gzipSync } from 'node:zlib';

import { expect, test } from '@playwright/test';

import { course } from '@lessons/course.ts';

/** Compressed script that a lesson may cost a phone before one of its live figures is touched, bytes. */
const BUDGET = 60_000;

test('a lesson costs a phone little script, however far it is read', async ({ browser, request, baseURL }) => {
  const sizes = new Map<string, number>();
  const sizeOf = async (path: string): Promise<number> => {
    const size = sizes.get(path) ?? gzipSync(await (await request.get(path)).body()).length;
    sizes.set(path, size);
    return size;
  };
  for (const { slug } of course) {
    // A context of its own, so that nothing comes from the cache of the lesson before.
    const context = await browser.newContext(baseURL ? { baseURL } : {});
    const page = await context.newPage();
    const paths = new Set<string>();
    page.on('request', (asked) => {
      const { pathname } = new URL(asked.url());
      if (pathname.endsWith('.js')) paths.add(pathname);
    });
    await page.goto(`/lessons/${slug}/`, { waitUntil: 'networkidle' });
    await page.evaluate(async () => {
      for (let y = 0; y < document.body.scrollHeight; y += 600) {
        window.scrollTo(0, y);
        await new Promise((next) => setTimeout(next, 30));
      }
    });
    await page.waitForLoadState('networkidle');
    let total = 0;
    for (const path of paths) total += await sizeOf(path);
    await context.close();
    const told = `${slug}: ${[...paths].map((path) => `${path} ${sizes.get(path) ?? 0}`).join(', ')}`;
    expect(total, told).toBeGreaterThan(1000);
    expect(total, told).toBeLessThanOrEqual(BUDGET);
  }
});
