import { readdirSync } from 'node:fs';

import { expect, test } from '@playwright/test';

import { runBed } from '@sim/bed/run.ts';
import type { BedFrame, BedResult } from '@sim/bed/types.ts';

import config from '../../playwright.config.ts';
import { agreedBeds } from './parts/agreed-beds.ts';

/** Greatest difference that counts as the same. */
const SAME = 1e-9;

/** The worker that the built site carries. */
const shipped = readdirSync('dist/_astro').find((name) => /^worker-.*\.js$/.test(name)) ?? '';

type Fields = Pick<BedFrame, 'mortarMm' | 'gapMm' | 'state'>;
interface Seen {
  result: BedResult;
  fields: Record<keyof Fields, number[]>;
}
const FIELDS = ['mortarMm', 'gapMm', 'state'] as const;

/** Every number of a result by its path. */
function numbersOf(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, part]) => numbersOf(part, `${path}.${key}`));
}
const apart = (one: number, other: number): number => (Object.is(one, other) ? 0 : Math.abs(one - other));

// With every compiler that a reader's browser has.
const own = config.use?.launchOptions;
test.use({
  launchOptions: { ...own, args: (own?.args ?? []).filter((option) => !option.startsWith('--js-flags')) },
});

test('the site’s worker in this browser and the solver in Node find the same beds to 1e-9', async ({ page }) => {
  test.setTimeout(120_000);
  await page.goto('/privacy/');
  const seen = await page.evaluate(
    async ({ url, setups, names }) => {
      const worker = new Worker(url, { type: 'module' });
      const beds: unknown[] = [];
      for (const [id, setup] of setups.entries()) {
        const run = await new Promise<{ result: unknown; frame: Record<string, ArrayLike<number>> }>((done, fail) => {
          worker.onmessage = ({ data }) => {
            if (data.kind === 'done') done(data.run);
            if (data.kind === 'failed') fail(new Error(data.says));
          };
          worker.onerror = (event) => fail(new Error(event.message));
          worker.postMessage({ kind: 'start', protocol: 2, id, setup, pictures: 'none' });
        });
        const fields = Object.fromEntries(names.map((name) => [name, Array.from(run.frame[name] ?? [])]));
        beds.push({ result: run.result, fields });
      }
      worker.terminate();
      return beds;
    },
    { url: `/_astro/${shipped}`, setups: agreedBeds.map(([, setup]) => setup), names: [...FIELDS] },
  );
  for (const [at, [name, setup]] of agreedBeds.entries()) {
    const there = seen[at] as Seen;
    const here = runBed(setup);
    const [ours, theirs] = [numbersOf(here.result), numbersOf(there.result)];
    expect(
      theirs.map(([path]) => path),
      name,
    ).toEqual(ours.map(([path]) => path));
    const figures = ours.filter(([, value], n) => !(apart(value, theirs[n]![1]) <= SAME));
    expect(figures, name).toEqual([]);
    for (const field of FIELDS) {
      const cells = here.frame[field];
      expect(there.fields[field].length, `${name}: ${field}`).toBe(cells.length);
      const off = cells.findIndex((value, n) => !(apart(value, there.fields[field][n]!) <= SAME));
      expect(off, `${name}: ${field}`).toBe(-1);
    }
  }
});
