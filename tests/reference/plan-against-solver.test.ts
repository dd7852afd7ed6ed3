import { describe, expect, test } from 'vitest';

import { leanShare } from '@sim/bed/lean.ts';
import { readSetup } from '@sim/bed/read-setup.ts';
import { runBed } from '@sim/bed/run.ts';
import { bedAt } from '@sim/estimate/notches.ts';
import { coverageOfOne } from '@sim/estimate/spread/one-bed.ts';
import { swirledCoverage } from '@sim/estimate/spread/swirl.ts';
import { valueOf } from '@sim/rules/rulebook.ts';
import { type Notch, ridgeHeightMm } from '@sim/trowel/notch.ts';
import { IN } from './rules-checks/check.ts';
import { swirlPairs } from './swirl-beds.ts';

/**
 * The estimator's law against the bed solver, on a handful of beds. The law keeps mortar where it was combed, the
 * solver lets it flow out from under the tight ends; so under a bowed tile the law may fall short of the solver, by
 * less than seven points, and never promise three points more.
 */
interface Handful {
  lengthMm: number;
  widthMm: number;
  width: number;
  depth: number;
  pushN: number;
  strokeMm: number;
  strokes: number;
  bowMm: [number, number];
  yieldPa: number;
  slanted?: boolean;
}
const SPEED = 20;
const VISCOSITY = 10;
const ANGLE = 45;

const notchOf = ({ width, depth, slanted }: Handful): Notch => ({
  shape: slanted === true ? 'slanted' : 'square',
  widthMm: width * IN,
  depthMm: depth * IN,
  toothMm: width * IN,
});

function solved(one: Handful, comb: object = { pattern: 'straight' }, more: object = {}): number {
  const reading = readSetup({
    tile: {
      lengthMm: one.lengthMm,
      widthMm: one.widthMm,
      thicknessMm: 9,
      densityKgM3: 2300,
      bowLengthMm: one.bowMm[0],
      bowWidthMm: one.bowMm[1],
    },
    trowel: { ...notchOf(one), angleDeg: ANGLE },
    comb: { ...comb, directionDeg: 90 },
    ...more,
    mortar: { yieldPa: one.yieldPa, viscosityPaS: VISCOSITY },
    actions: [
      { do: 'press', forceN: one.pushN },
      ...(one.strokes > 0
        ? [
            {
              do: 'slide',
              forceN: one.pushN,
              strokeMm: one.strokeMm,
              strokes: one.strokes,
              directionDeg: 0,
              speedMmS: SPEED,
            },
          ]
        : []),
    ],
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return runBed(reading.value.setup).result.coverage;
}

function reckoned(one: Handful): number {
  const notch = notchOf(one);
  const bedMm = bedAt(notch, ANGLE);
  return coverageOfOne({
    bedMm,
    coatMm: 0,
    crestMm: ridgeHeightMm({ ...notch, angleDeg: ANGLE, wearMm: 0 }),
    pitchMm: 2 * notch.widthMm,
    pointed: false,
    lean: leanShare({ ...notch, angleDeg: ANGLE, wearMm: 0 }),
    bowMm: one.bowMm,
    yieldPa: one.yieldPa,
    pressurePa: one.pushN / ((one.lengthMm * one.widthMm) / 1e6) + 0.009 * 2300 * 9.81,
    slideMm: one.strokeMm * one.strokes,
    speed: (VISCOSITY * SPEED) / (bedMm * one.yieldPa),
    transfer: 1,
  });
}

const floor = { lengthMm: 300, widthMm: 300, width: 1 / 4, depth: 3 / 8, pushN: 200, yieldPa: 450 };
const large = { lengthMm: 600, widthMm: 300, width: 1 / 2, depth: 1 / 2, pushN: 250, yieldPa: 450 };

describe('the law against the solver', () => {
  test.each<[string, Handful]>([
    ['12 in, pressed only', { ...floor, strokeMm: 0, strokes: 0, bowMm: [0, 0] }],
    ['12 in, moved there and back', { ...floor, strokeMm: 6, strokes: 2, bowMm: [0, 0] }],
    ['12 in, bowed 1 mm', { ...floor, strokeMm: 6, strokes: 2, bowMm: [1, 0] }],
    ['12 in, cupped 1 mm', { ...floor, strokeMm: 6, strokes: 2, bowMm: [-1, 0] }],
    ['12 × 24, pressed only', { ...large, strokeMm: 0, strokes: 0, bowMm: [0, 0] }],
    ['12 × 24, bowed 1.3 mm', { ...large, strokeMm: 12, strokes: 2, bowMm: [1.3, 0] }],
    [
      '12 × 24, bowed, quarter notch',
      { ...large, width: 1 / 4, depth: 1 / 4, strokeMm: 6, strokes: 2, bowMm: [1.3, 0] },
    ],
    ['12 × 24, stiff mix, light push', { ...large, yieldPa: 900, pushN: 150, strokeMm: 0, strokes: 0, bowMm: [0, 0] }],
    ['12 × 24, slanted, pressed only', { ...large, slanted: true, strokeMm: 0, strokes: 0, bowMm: [0, 0] }],
    ['12 × 24, slanted, lightly', { ...large, slanted: true, pushN: 100, strokeMm: 0, strokes: 0, bowMm: [0, 0] }],
    ['12 × 24, slanted, shaken', { ...large, slanted: true, strokeMm: 1, strokes: 6, bowMm: [0, 0] }],
    ['12 × 24, slanted, bowed 1.3 mm', { ...large, slanted: true, strokeMm: 1, strokes: 6, bowMm: [1.3, 0] }],
    ['12 × 24, slanted, leaned on', { ...large, slanted: true, pushN: 500, strokeMm: 0, strokes: 0, bowMm: [0, 0] }],
  ])('%s', (_, one) => {
    const difference = reckoned(one) - solved(one);
    expect(difference).toBeLessThan(0.03);
    expect(difference).toBeGreaterThan(-0.07);
  });
});

/** The beds of seed 1 fitted the rule (`npm run fit`); these were not among them. */
describe('the cost of a swirl on beds held out of the fit', () => {
  test(
    'lies as near to the solver as the rule says, and to neither side by more than half of that',
    { timeout: 120_000 },
    () => {
      const apart = swirlPairs(2, 24).map((pair) => swirledCoverage(pair.straight, pair) - pair.swirled);
      const mean = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
      const spread = Math.sqrt(mean(apart.map((one) => one * one)));
      const said = valueOf('model.swirl', 'spread');
      expect(spread).toBeLessThan(said);
      expect(spread).toBeGreaterThan(said / 2);
      expect(Math.abs(mean(apart))).toBeLessThan(said / 2);
    },
  );
});

/**
 * What a swirl costs was read off other beds than these. Swirls differ from hand to hand by some points, so four are run
 * and averaged; the law then lies within twice what the rule says of the solver, and never above what straight ridges come to.
 */
describe('the cost of a swirl against the solver', () => {
  const quarter = { width: 1 / 4, depth: 1 / 4, yieldPa: 450, bowMm: [0, 0] as [number, number] };
  const still = { strokeMm: 0, strokes: 0 };
  const moved = { strokeMm: 5, strokes: 3 };
  const beds: [string, Handful][] = [
    ['6 in, pressed', { ...quarter, ...still, lengthMm: 152, widthMm: 152, pushN: 100 }],
    ['9 in, pressed', { ...quarter, ...still, lengthMm: 229, widthMm: 229, pushN: 150 }],
    ['13 in, pressed', { ...quarter, ...still, lengthMm: 330, widthMm: 330, pushN: 200 }],
    ['13 in, moved', { ...quarter, ...moved, lengthMm: 330, widthMm: 330, pushN: 200 }],
    [
      '14 in, half notch, stiff',
      { ...large, ...still, lengthMm: 356, widthMm: 356, yieldPa: 700, pushN: 150, bowMm: [0, 0] },
    ],
    ['12 × 24, half notch, moved', { ...large, ...moved, strokeMm: 12, bowMm: [0.5, 0] }],
    ['12 × 24, pressed', { ...large, ...still, width: 1 / 4, depth: 3 / 8, bowMm: [0, 0], pushN: 250 }],
    ['15 in, moved a little', { ...floor, strokeMm: 3, strokes: 1, lengthMm: 381, widthMm: 381, bowMm: [0, 0] }],
  ];
  const apart: number[] = [];
  test.each(beds)('%s', (_, one) => {
    const swirls = [4, 5, 6, 7].map((seed) =>
      solved(one, { pattern: 'swirl', seed }, { cellMm: (2 * one.width * IN) / 8 }),
    );
    const straight = reckoned(one);
    const swirled = swirledCoverage(straight, {
      lengthMm: one.lengthMm,
      widthMm: one.widthMm,
      pitchMm: 2 * one.width * IN,
      slideMm: one.strokeMm * one.strokes,
    });
    const difference = swirled - swirls.reduce((sum, swirl) => sum + swirl, 0) / swirls.length;
    apart.push(difference);
    expect(swirled).toBeLessThanOrEqual(straight);
    expect(Math.abs(difference)).toBeLessThan(2 * valueOf('model.swirl', 'spread'));
  });
  test('and not one-sided: the mean of all lies within five points', () => {
    expect(apart).toHaveLength(beds.length);
    expect(Math.abs(apart.reduce((sum, one) => sum + one, 0) / apart.length)).toBeLessThan(0.05);
  });
});
