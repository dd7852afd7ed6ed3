/** How soon the site's worker shows something in Chromium, as a reader meets it. */
import { readdirSync } from 'node:fs';

import type { Browser } from '@playwright/test';

import { middle, type Section } from './section.ts';
import { sized } from './solver.ts';

const BUDGET_MS = 100;
const ROUNDS = 5;

interface Heard {
  firstMs: number;
  secondMs: number;
  doneMs: number;
  pictures: number;
}

export async function workerSection(browser: Browser, base: string): Promise<Section> {
  const file = readdirSync('dist/_astro').find((name) => /^worker-.*\.js$/.test(name)) ?? '';
  const page = await browser.newPage();
  await page.goto(`${base}/privacy/`);
  const heard = await page.evaluate(
    async ({ url, setup, rounds }) => {
      const ask = (worker: Worker, begun: number): Promise<Heard> =>
        new Promise((done, fail) => {
          const pictures: number[] = [];
          worker.onerror = (event) => fail(new Error(event.message));
          worker.onmessage = ({ data }) => {
            const at = performance.now() - begun;
            if (data.kind === 'failed') fail(new Error(data.says));
            if (data.kind === 'frame') pictures.push(at);
            if (data.kind === 'done')
              done({
                firstMs: pictures[0] ?? NaN,
                secondMs: pictures[1] ?? NaN,
                doneMs: at,
                pictures: pictures.length,
              });
          };
          worker.postMessage({ kind: 'start', protocol: 2, id: 1, setup, pictures: 'all' });
        });
      const all: { fresh: Heard; again: Heard }[] = [];
      for (let n = 0; n < rounds; n += 1) {
        const begun = performance.now();
        const worker = new Worker(url, { type: 'module', name: `bench-${n}` });
        const fresh = await ask(worker, begun);
        all.push({ fresh, again: await ask(worker, performance.now()) });
        worker.terminate();
      }
      return all;
    },
    { url: `/_astro/${file}`, setup: sized(610, 305), rounds: ROUNDS },
  );
  await page.close();
  const row = (bed: string, runs: readonly Heard[]): object => {
    const of = (key: keyof Heard): number => Math.round(middle(runs.map((one) => one[key])));
    return {
      worker: bed,
      firstPictureMs: of('firstMs'),
      secondPictureMs: of('secondMs'),
      allMs: of('doneMs'),
      pictures: of('pictures'),
      budgetMs: BUDGET_MS,
      holds: of('firstMs') <= BUDGET_MS,
    };
  };
  return {
    title: 'Worker in Chromium: first picture',
    says: `A 12 × 24 in bed, press and four strokes, from asking to its pictures, by the clock; the middle of ${ROUNDS}. A fresh worker is fetched, started and compiled first. Budget: the first picture within ${BUDGET_MS} ms.`,
    rows: [
      row(
        'fresh',
        heard.map(({ fresh }) => fresh),
      ),
      row(
        'at work before',
        heard.map(({ again }) => again),
      ),
    ],
  };
}
