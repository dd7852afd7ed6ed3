/**
 * What a page costs a phone: first paint, largest paint and compressed script, on the built site with the processor
 * slowed four times and a slow mobile network. Needs `npm run build`; a budget beside each figure.
 */
import { gzipSync } from 'node:zlib';

import type { Browser } from '@playwright/test';

import type { Section } from './section.ts';

interface PageRow {
  page: string;
  firstPaintMs: number;
  largestPaintMs: number;
  scriptKb: number;
  /** False where a budget is missed. */
  holds: boolean;
}

/** A phone of some years ago on a weak signal: 1.6 Mbit/s down, 150 ms there and back. */
const PHONE = { width: 360, height: 780, slowdown: 4, downBytesPerS: 200_000, latencyMs: 150 };
const BUDGET = { firstPaintMs: 1800, largestPaintMs: 2500, scriptKb: 60 };

const PAGES = [
  '/',
  '/lessons/what-the-ridges-are-for/',
  '/lessons/combing/',
  '/rounds/',
  '/job/',
  '/bench/',
  '/sources/',
];

async function measure(browser: Browser, base: string, path: string): Promise<PageRow> {
  const context = await browser.newContext({ viewport: PHONE, serviceWorkers: 'block' });
  const page = await context.newPage();
  const wire = await context.newCDPSession(page);
  await wire.send('Emulation.setCPUThrottlingRate', { rate: PHONE.slowdown });
  await wire.send('Network.enable');
  await wire.send('Network.emulateNetworkConditions', {
    offline: false,
    latency: PHONE.latencyMs,
    downloadThroughput: PHONE.downBytesPerS,
    uploadThroughput: PHONE.downBytesPerS / 2,
  });
  const scripts: Promise<number>[] = [];
  page.on('response', (response) => {
    if (new URL(response.url()).pathname.endsWith('.js'))
      scripts.push(
        response.body().then(
          (body) => gzipSync(body).length,
          () => 0,
        ),
      );
  });
  await page.goto(base + path, { waitUntil: 'networkidle' });
  const paint = await page.evaluate(
    () =>
      new Promise<{ first: number; largest: number }>((done) => {
        const first = performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? NaN;
        new PerformanceObserver((list) => done({ first, largest: list.getEntries().at(-1)?.startTime ?? NaN })).observe(
          {
            type: 'largest-contentful-paint',
            buffered: true,
          },
        );
      }),
  );
  const script = (await Promise.all(scripts)).reduce((sum, size) => sum + size, 0);
  await context.close();
  const row = {
    page: path,
    firstPaintMs: Math.round(paint.first),
    largestPaintMs: Math.round(paint.largest),
    scriptKb: Math.round(script / 100) / 10,
  };
  const lesson = path.startsWith('/lessons/');
  const holds =
    row.firstPaintMs <= BUDGET.firstPaintMs &&
    row.largestPaintMs <= BUDGET.largestPaintMs &&
    (!lesson || row.scriptKb <= BUDGET.scriptKb);
  return { ...row, holds };
}

/** Measures each page once from an empty cache; the server sends plain files, so the network carries more than a host that compresses. */
export async function pagesSection(browser: Browser, base: string): Promise<Section> {
  const rows: PageRow[] = [];
  for (const path of PAGES) rows.push(await measure(browser, base, path));
  return {
    title: 'Pages on an old phone',
    says: `360 px wide, the processor slowed four times, 1.6 Mbit/s and 150 ms there and back, nothing in the cache. \`scriptKb\` is compressed script. Budgets: first paint ${BUDGET.firstPaintMs} ms, largest paint ${BUDGET.largestPaintMs} ms, a lesson's script ${BUDGET.scriptKb} kB before a live figure is touched.`,
    rows,
  };
}
