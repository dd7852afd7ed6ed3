import { expect, test } from 'vitest';

import { keptRuns } from '@quiz/runs/kept.ts';
import { METHODS } from '@quiz/runs/methods.ts';
import { recordRun } from '@quiz/runs/record.ts';
import { baseJobs } from '@quiz/runs/bases.ts';

/** As many as a minute's patience allows; others every time, so that all are seen over the weeks. */
const AGAIN = 4;

test('the shelf holds every base job by every method, in order', () => {
  expect(keptRuns.map(([base, method]) => [base, method])).toEqual(
    baseJobs.flatMap((_, base) => METHODS.map((method) => [base, method])),
  );
});

test('kept runs, picked at random, come out of the solver as they were kept', () => {
  for (let n = 0; n < AGAIN; n++) {
    const [base, method, coverage, pocket, columns, rows, bits] =
      keptRuns[Math.floor(Math.random() * keptRuns.length)]!;
    const again = recordRun(base, method);
    const name = `base job ${base}, ${method}; if the solver was changed on purpose, run npm run record`;
    expect(again[2], name).toBeCloseTo(coverage, 2);
    expect([again[4], again[5]], name).toEqual([columns, rows]);
    const differing = [...bits].filter((digit, at) => digit !== again[6][at]).length;
    expect(differing / bits.length, name).toBeLessThan(0.01);
    expect(again[3] === null, name).toBe(pocket === null);
  }
});
