/**
 * “The softer the mix, the more it covers” does not hold for a push off the middle: shown by statics, and by the solver at
 * three sizes of cell. Six upright ridges of 10 mm in lanes as wide bear at the most what a long strip between plates
 * bears with its end term, F/L = τw(w/2h + 3/2) (Hill). Pushed too far off the middle for that, the tile must tip, and it
 * lets go of the ridges on the other side; on a mix stiff enough it lies on all six as it was laid.
 */
import { describe, expect, it } from 'vitest';

import { coverage } from '@sim/bed/contact.ts';
import { defaultSetup } from '@sim/bed/defaults.ts';
import type { Bed } from '@sim/bed/bed.ts';

import { workedBed } from '../property/bed-twins.ts';

const SIDE_MM = 120;
const RIDGE_MM = 10;
const HIGH_MM = 12;
const PUSH_N = 5;
const AT_MM = 24;
const SOFT_PA = 750;
const STIFF_PA = 1200;

function pushedBed(yieldPa: number, cellsAPitch: number): Bed {
  const setup = defaultSetup();
  Object.assign(setup.tile, { lengthMm: SIDE_MM, widthMm: SIDE_MM });
  Object.assign(setup.trowel, { widthMm: RIDGE_MM, depthMm: HIGH_MM, toothMm: RIDGE_MM, angleDeg: 90 });
  setup.comb.directionDeg = 90;
  setup.mortar.yieldPa = yieldPa;
  setup.cellMm = (2 * RIDGE_MM) / cellsAPitch;
  setup.actions = [{ do: 'press', forceN: PUSH_N, atX: AT_MM, atY: 0 }];
  return workedBed(setup);
}

/** The greatest moment about the middle that ridges bearing at the most so much can bear a load with, N·mm. */
function mostMoment(loadN: number, ridgeN: number): number {
  let left = loadN;
  let moment = 0;
  for (let atMm = SIDE_MM / 2 - RIDGE_MM; left > 0 && atMm > -SIDE_MM / 2; atMm -= 2 * RIDGE_MM) {
    const takes = Math.min(left, ridgeN);
    moment += takes * atMm;
    left -= takes;
  }
  return moment;
}

/** What one ridge bears by Hill's strip, N. */
const ridgeN = (yieldPa: number): number => yieldPa * 1e-6 * RIDGE_MM * (RIDGE_MM / (2 * HIGH_MM) + 1.5) * SIDE_MM;

describe.each([8, 16, 24])('a push off the middle, %i cells a pitch', (cells) => {
  const soft = pushedBed(SOFT_PA, cells);
  const stiff = pushedBed(STIFF_PA, cells);
  const loadN = PUSH_N + stiff.weightN;

  it('statics: the soft ridges cannot bear it as they stand; the stiff ones can, with a quarter to spare', () => {
    expect(mostMoment(loadN, ridgeN(SOFT_PA))).toBeLessThan(PUSH_N * AT_MM);
    expect(mostMoment(loadN, 0.75 * ridgeN(STIFF_PA))).toBeGreaterThan(PUSH_N * AT_MM);
  });

  it('so the stiff bed keeps its first touch, half the tile, and the soft one tips and covers less', () => {
    expect(coverage(stiff)).toBeCloseTo(0.5, 9);
    expect(stiff.slopeX).toBe(0);
    expect(soft.slopeX).toBeLessThan(0);
    expect(coverage(soft)).toBeLessThan(coverage(stiff) - 0.03);
  });
});
