import { existsSync } from 'node:fs';

import { chromium, type Browser } from '@playwright/test';

import { serve } from '../browser/static-server.ts';

const SYSTEM = ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find((path) => existsSync(path));

/** Software graphics, as on a machine without a card: the worst that a reader may have. */
const GRAPHICS = ['--use-angle=swiftshader', '--enable-unsafe-swiftshader'];

/** Runs `work` with a browser and the built site served beside it. */
export async function inChromium<T>(work: (browser: Browser, base: string) => Promise<T>): Promise<T> {
  const site = await serve(`${process.cwd()}/dist`);
  const browser = await chromium.launch({
    ...(SYSTEM ? { executablePath: SYSTEM } : {}),
    args: ['--no-sandbox', ...GRAPHICS],
  });
  try {
    return await work(browser, site.url);
  } finally {
    await browser.close();
    await site.stop();
  }
}
