/**
 * A push raised little by little to its load ends as one push of that load: yielding mortar and caught air know no steps,
 * so what differs is what the solver's own steps are off by. Lanes that close within a step are the hard part.
 */
import { describe, expect, it } from 'vitest';

import { defaultRelief, defaultSetup } from '@sim/bed/defaults.ts';
import { runBed } from '@sim/bed/run.ts';
import type { ReliefSetup } from '@sim/bed/types.ts';

const FORCE_N = 100;

function coverageIn(pushes: number, shape: ReliefSetup['shape'] | null, pattern: 'straight' | 'swirl'): number {
  const setup = defaultSetup();
  Object.assign(setup.tile, { lengthMm: 200, widthMm: 150 });
  if (shape) setup.tile.relief = { ...defaultRelief(), shape, raisedShare: 0.4, depthMm: 1.5 };
  Object.assign(setup.trowel, { widthMm: 6.35, depthMm: 6.35, toothMm: 6.35 });
  setup.comb.pattern = pattern;
  setup.actions = Array.from({ length: pushes }, (_, n) => ({
    do: 'press',
    forceN: (FORCE_N * (n + 1)) / pushes,
    atX: 0,
    atY: 0,
  }));
  return runBed(setup).result.coverage;
}

describe('one push or twenty rising to it: the same coverage to a point and a half', () => {
  it.each([
    ['straight', null],
    ['straight', 'ribs'],
    ['straight', 'grid'],
    ['straight', 'dots'],
    ['swirl', null],
    ['swirl', 'ribs'],
    ['swirl', 'grid'],
    ['swirl', 'dots'],
  ] as const)('%s, relief: %s', (pattern, shape) => {
    expect(Math.abs(coverageIn(1, shape, pattern) - coverageIn(20, shape, pattern))).toBeLessThan(0.015);
  });
});
