/** What the tests of orders share: a bed's coverage, beds that differ in one thing, the order itself. */
import fc from 'fast-check';
import { expect } from 'vitest';

import { runBed } from '@sim/bed/run.ts';
import type { BedSetup } from '@sim/bed/types.ts';

import { DRAWS, draws, type Draw, seed } from './bed-draws.ts';

export const covered = (setup: BedSetup): number => runBed(setup).result.coverage;

/** The tile flat and the push in its middle, so that no ridge is met later than another. */
export const level = (draw: Draw): Draw => ({ ...draw, off: [0, 0], bows: [0, 0, 0] });
/** Cells more a side: four ridges and more under the tile, so that its edges do not decide. */
export const enlarged = (draw: Draw, cells: number): Draw => ({
  ...draw,
  sides: [draw.sides[0] + cells, draw.sides[1] + cells],
});
export const pushed = (setup: BedSetup, times: number): BedSetup => ({
  ...setup,
  actions: setup.actions.map((action) => ('forceN' in action ? { ...action, forceN: action.forceN * times } : action)),
});
export const turned = (setup: BedSetup, degrees: number): BedSetup => ({
  ...setup,
  actions: setup.actions.map((action) =>
    action.do === 'slide' ? { ...action, directionDeg: setup.comb.directionDeg + degrees } : action,
  ),
});

/** Of eight cells to a pitch the last decides the rest: up to there lanes are seen as they are. */
const SEEN = 7 / 8;
/** The order of two coverages, as far as the cells show it: what is nearly full may differ by its last cell. */
export const expectOrder = (less: number, more: number, what: string, within = 1e-9): void => {
  expect(Math.min(less, SEEN), what).toBeLessThanOrEqual(more + within);
};

/** Three hundred draws of one property. */
export const check = (holds: (draw: Draw) => void): void => {
  fc.assert(fc.property(draws, holds), { seed, numRuns: DRAWS });
};
