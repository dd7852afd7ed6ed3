import { gzipSync } from 'node:zlib';

import { expect, test } from '@playwright/test';

import { course } from '@lessons/course.ts';

/** Compressed script that a lesson may cost a phone before one of its live figures is touched, bytes. */
const BUDGET = 60_000;

test.use({ serviceWorkers: 'block' });

test('a lesson costs a phone little script, however far it is read', async ({ page }) => {
  for (const { slug } of course) {
    const scripts = new Map<string, Promise<number>>();
    const note = (response: import('@playwright/test').Response): void => {
      const { pathname } = new URL(response.url());
      if (pathname.endsWith('.js'))
        scripts.set(
          pathname,
          response.body().then((body) => gzipSync(body).length),
        );
    };
    page.on('response', note);
    await page.goto(`/lessons/${slug}/`, { waitUntil: 'networkidle' });
    await page.evaluate(async () => {
      for (let y = 0; y < document.body.scrollHeight; y += 600) {
        window.scrollTo(0, y);
        await new Promise((next) => setTimeout(next, 30));
      }
    });
    await page.waitForLoadState('networkidle');
    const sizes = await Promise.all(scripts.values());
    const total = sizes.reduce((sum, size) => sum + size, 0);
    expect(total, `${slug}: ${[...scripts.keys()].join(' ')}`).toBeGreaterThan(1000);
    expect(total, `${slug}: ${[...scripts.keys()].join(' ')}`).toBeLessThanOrEqual(BUDGET);
    page.off('response', note);
  }
});
