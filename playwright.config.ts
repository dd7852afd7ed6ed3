import { defineConfig } from '@playwright/test';

import { systemChromium } from './site/commands/browser.mjs';

// A system Chromium is used when there is one; elsewhere the test tool's own.
const executablePath = systemChromium();
const port = Number(process.env['SITE_PORT'] ?? 4322);

export default defineConfig({
  testDir: 'tests/browser',
  workers: 2,
  retries: process.env['CI'] ? 1 : 0,
  timeout: 120_000,
  reporter: [['list']],
  // One set of pictures for every machine: letters may differ by a shade at their edges, not by their place.
  snapshotPathTemplate: '{testDir}/looks/{arg}{ext}',
  // A busy machine takes its time; what never comes fails all the same.
  expect: { timeout: 15_000, toHaveScreenshot: { threshold: 0.25, maxDiffPixelRatio: 0.01 } },
  use: {
    // Each test is a first visit: without this the whole site would be fetched and kept two hundred times over.
    serviceWorkers: 'block',
    baseURL: `http://localhost:${port}/`,
    launchOptions: {
      ...(executablePath ? { executablePath } : {}),
      args: [
        '--no-sandbox',
        '--use-angle=swiftshader',
        '--enable-unsafe-swiftshader',
        // Only what a page draws in three dimensions goes through the software graphics, not the page itself.
        '--disable-gpu-compositing',
        // Both processors are busy with two tests: no third thread helps, and each page is gone before the dearest
        // compiler's work has paid. `agreement.spec.ts` is run with all a reader's browser has.
        '--js-flags=--no-turbofan --single-threaded',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--no-first-run',
      ],
    },
  },
  webServer: {
    // The built site is what is tested; `npm run build` comes first.
    command: `npm exec -- astro preview --port ${port}`,
    url: `http://localhost:${port}/`,
    reuseExistingServer: !process.env['CI'],
    timeout: 120_000,
  },
});
