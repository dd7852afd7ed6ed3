import { chromium, type Browser } from '@playwright/test';

import { systemChromium } from '../../site/commands/browser.mjs';
import { serve } from '../browser/static-server.ts';

/** Software graphics, as on a machine without a card: the worst that a reader may have. */
const GRAPHICS = ['--use-angle=swiftshader', '--enable-unsafe-swiftshader'];

/** Runs `work` with a browser and the built site served beside it. */
export async function inChromium<T>(work: (browser: Browser, base: string) => Promise<T>): Promise<T> {
  const site = await serve(`${process.cwd()}/dist`);
  const executablePath = systemChromium();
  const browser = await chromium.launch({
    ...(executablePath ? { executablePath } : {}),
    args: ['--no-sandbox', ...GRAPHICS],
  });
  try {
    return await work(browser, site.url);
  } finally {
    await browser.close();
    await site.stop();
  }
}
