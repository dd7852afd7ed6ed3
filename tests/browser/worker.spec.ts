import { expect, test, type Page } from '@playwright/test';

import { defaultSetup } from '@sim/bed/defaults.ts';
import { runBed } from '@sim/bed/run.ts';
import type { BedSetup } from '@sim/bed/types.ts';

import { servePart } from './parts/serve-part.ts';
import type { Said } from './parts/worker-page.ts';

let site: Awaited<ReturnType<typeof servePart>>;
test.beforeAll(async () => {
  site = await servePart('worker-page.ts');
});
test.afterAll(() => site.stop());
test.beforeEach(async ({ page }) => {
  await page.goto(site.url);
  await page.waitForFunction(() => 'bedRunner' in window);
});

function bed(strokes: number, yieldPa = 500, sideMm = 150): BedSetup {
  const setup = defaultSetup();
  Object.assign(setup.tile, { lengthMm: sideMm, widthMm: sideMm });
  setup.mortar.yieldPa = yieldPa;
  setup.actions = [
    { do: 'press', forceN: 60, atX: 0, atY: 0 },
    { do: 'slide', forceN: 60, strokeMm: 6, strokes, directionDeg: 0, speedMmS: 20 },
  ];
  return setup;
}
/** Long enough that nothing ends it but a test. */
const endless = (): BedSetup => ({ ...bed(20, 500, 900), cellMm: 0.7 });
const coverage = (setup: BedSetup): number => runBed(setup).result.coverage;

/** Runs one bed and gives back all that was said of it. */
const said = (page: Page, setup: BedSetup): Promise<Said[]> =>
  page.evaluate(async (one) => {
    await window.noted(window.bedRunner(), one, 0);
    return window.said;
  }, setup);

test('asked for the combed bed alone, a run makes that one picture and ends with the same figures', async ({
  page,
}) => {
  const setup = bed(4);
  const order = await page.evaluate(async (one) => {
    await window.noted(window.bedRunner(), one, 0, undefined, 'combed');
    return window.said;
  }, setup);
  expect(order.filter((one) => 'frame' in one)).toEqual([expect.objectContaining({ frame: -1 })]);
  expect(order.at(-1)).toEqual({ at: 0, coverage: coverage(setup) });
});

test('combing alone gives the first picture of a run, and takes its turn', async ({ page }) => {
  const setup = bed(1);
  const [combed, ended] = await page.evaluate(
    async ([one, long]) => {
      const runner = window.bedRunner();
      const run = runner.run(long!).catch((problem: Error) => problem.name);
      return [Array.from((await runner.comb(one!)).mortarMm), await run] as const;
    },
    [setup, endless()],
  );
  const pictures: Float32Array[] = [];
  runBed(setup, { onFrame: ({ mortarMm }) => pictures.push(mortarMm) });
  expect(combed).toEqual(Array.from(pictures[0]!));
  expect(ended).toBe('BedStopped');
});

test('a run tells its start, the combed bed, pictures as the work goes, and its end, in this order', async ({
  page,
}) => {
  const setup = bed(4);
  const order = await said(page, setup);
  expect(order[0]).toEqual({ at: 0, progress: 0 });
  expect(order[1]).toMatchObject({ frame: -1 });
  expect(order.at(-1)).toEqual({ at: 0, coverage: coverage(setup) });
  const shares = order.flatMap((one) => ('progress' in one ? [one.progress] : []));
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
  expect(shares.at(-1)).toBe(1);
  const frames = order.flatMap((one) => ('frame' in one ? [one] : []));
  const actions = frames.map((one) => one.frame);
  expect(actions).toEqual([...actions].sort((a, b) => a - b));
  expect(new Set(actions)).toEqual(new Set([-1, 0, 1]));
  for (const { cells, gap } of frames) expect(gap).toBe(cells);
  // Pictures stand between shares of progress: they are sent as the work goes, not together at its end.
  const between = order.filter(
    (one, at) => 'frame' in one && order.slice(0, at).some((a) => 'progress' in a && a.progress > 0.2),
  );
  expect(between.length).toBeGreaterThan(3);
});

test('the first picture comes while the worker is at work, and cancel then stops it', async ({ page }) => {
  const order = await page.evaluate(async (one) => {
    const runner = window.bedRunner();
    await window.noted(runner, one, 0, (said) => 'frame' in said && runner.cancel());
    await new Promise((later) => setTimeout(later, 300));
    return window.said;
  }, endless());
  expect(order.filter((one) => 'frame' in one)).toHaveLength(1);
  expect(order.at(-1)).toEqual({ at: 0, error: 'BedStopped', says: 'The run was stopped.' });
  await expect.poll(() => page.workers().length).toBe(0);
});

test('after a cancel the next bed is computed', async ({ page }) => {
  const [long, short] = [endless(), bed(2)];
  const order = await page.evaluate(
    async ([first, second]) => {
      const runner = window.bedRunner();
      const stopped = window.noted(runner, first!, 0);
      runner.cancel();
      await stopped;
      await window.noted(runner, second!, 1);
      return window.said;
    },
    [long, short],
  );
  expect(order.filter((one) => one.at === 0)).toEqual([{ at: 0, error: 'BedStopped', says: 'The run was stopped.' }]);
  expect(order.at(-1)).toEqual({ at: 1, coverage: coverage(short) });
});

for (const [how, pauseMs] of [
  ['all at once', 0],
  ['a step at a time', 25],
] as const)
  test(`of a slider dragged ${how} only the last bed's result arrives`, async ({ page }) => {
    const beds = Array.from({ length: 24 }, (_, n) => bed(4, 300 + 20 * n, 300));
    const order = await page.evaluate(
      async ({ setups, pause }) => {
        const runner = window.bedRunner();
        const runs: Promise<void>[] = [];
        for (const [at, setup] of setups.entries()) {
          runs.push(window.noted(runner, setup, at));
          if (pause > 0) await new Promise((next) => setTimeout(next, pause));
        }
        await Promise.all(runs);
        return window.said;
      },
      { setups: beds, pause: pauseMs },
    );
    const last = beds.length - 1;
    const ends = order.filter((one) => 'coverage' in one || 'error' in one);
    expect(ends).toHaveLength(beds.length);
    expect(order.at(-1)).toEqual({ at: last, coverage: coverage(beds[last]!) });
    // What was overtaken says nothing any more once a later bed has spoken.
    const speaks = order.flatMap((one) => ('frame' in one || 'progress' in one ? [one.at] : []));
    expect(speaks).toEqual([...speaks].sort((a, b) => a - b));
    if (pauseMs === 0) {
      expect(new Set(speaks)).toEqual(new Set([last]));
      expect(ends.filter((one) => 'coverage' in one)).toHaveLength(1);
    }
  });

test('a worker that its browser ends in mid-run is told in a sentence, and the next bed is computed', async ({
  page,
}) => {
  const short = bed(2);
  const order = await page.evaluate(
    async ([first, second]) => {
      const runner = window.bedRunner();
      const { terminate } = Worker.prototype;
      await window.noted(runner, first!, 0, (said) => {
        if ('frame' in said) setTimeout(() => window.workers.forEach((worker) => terminate.call(worker)), 200);
      });
      await window.noted(runner, second!, 1);
      return window.said;
    },
    [endless(), short],
  );
  expect(order.find((one) => 'error' in one)).toEqual({
    at: 0,
    error: 'Error',
    says: 'The browser stopped the worker that computes beds; try once more.',
  });
  expect(order.at(-1)).toEqual({ at: 1, coverage: coverage(short) });
});

test('a bed that cannot be computed says why, and the next one is computed', async ({ page }) => {
  const [odd, good] = [bed(2), bed(2)];
  odd.actions.unshift({ do: 'lift' });
  const order = await page.evaluate(
    async ([first, second]) => {
      const runner = window.bedRunner();
      await window.noted(runner, first!, 0);
      await window.noted(runner, second!, 1);
      return window.said;
    },
    [odd, good],
  );
  expect(order.find((one) => 'error' in one)).toMatchObject({
    says: 'A lifted tile cannot be worked on; put the lift last.',
  });
  expect(order.at(-1)).toEqual({ at: 1, coverage: coverage(good) });
});

test('a worker whose file does not come is told in a sentence, and the next bed is computed', async ({ page }) => {
  const good = bed(2);
  await page.route(/worker-.*\.js$/, (route) => route.abort());
  const first = await said(page, good);
  expect(first).toEqual([
    { at: 0, error: 'Error', says: 'The worker that computes beds could not be started; try once more.' },
  ]);
  await page.unroute(/worker-.*\.js$/);
  await page.evaluate((setup) => window.noted(window.bedRunner(), setup, 1), good);
  expect((await page.evaluate(() => window.said)).at(-1)).toEqual({ at: 1, coverage: coverage(good) });
});

test('a page and a worker of different versions part with a sentence', async ({ page }) => {
  const reply = await page.evaluate(async (setup) => {
    const runner = window.bedRunner();
    await window.noted(runner, setup, 0);
    const worker = window.workers[0]!;
    return new Promise<unknown>((hear) => {
      worker.onmessage = (event) => hear(event.data);
      worker.postMessage({ kind: 'start', protocol: 0, id: 7, setup, pictures: 'none' });
    });
  }, bed(1));
  expect(reply).toEqual({
    kind: 'failed',
    id: 7,
    says: 'The page and its worker are of different versions; reload the page.',
  });
});
