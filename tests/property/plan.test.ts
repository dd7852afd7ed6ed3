import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { labelBags } from '@sim/estimate/bags.ts';
import { chanceAllGood, stillBad } from '@sim/estimate/pull.ts';
import { riseInJoints } from '@sim/mortar/squeeze-up.ts';
import { coverageOfOne, type OneBed } from '@sim/estimate/spread/one-bed.ts';
import { areaOf } from '../reference/rules-checks/jobs.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const side = between(100, 900);
const few = { numRuns: 25 };

const beds = fc.record({
  bedMm: between(1.5, 6),
  coatMm: between(-0.8, 1.5),
  pitchMm: between(6, 26),
  bowMm: fc.tuple(between(-2, 2), between(-2, 2)),
  yieldPa: between(100, 1500),
  pressurePa: between(100, 8000),
  slideMm: between(0, 40),
  speed: between(0, 3),
});
const whole = (one: Omit<OneBed, 'crestMm' | 'pointed' | 'transfer'>): OneBed => ({
  ...one,
  crestMm: 2 * one.bedMm,
  pointed: false,
  transfer: 1,
});

describe('coverage of one tile', () => {
  test('is a share', () => {
    fc.assert(
      fc.property(beds, (one) => {
        const coverage = coverageOfOne(whole(one));
        expect(coverage).toBeGreaterThanOrEqual(0);
        expect(coverage).toBeLessThanOrEqual(1);
      }),
      { numRuns: 300 },
    );
  });
  test('rises with push and with slide, falls with stiffness, to half a point', () => {
    fc.assert(
      fc.property(beds, between(1.1, 3), (one, more) => {
        const still = { ...one, speed: 0 };
        const base = coverageOfOne(whole(still));
        const push = coverageOfOne(whole({ ...still, pressurePa: one.pressurePa * more }));
        const soft = coverageOfOne(whole({ ...still, yieldPa: one.yieldPa / more }));
        const slide = coverageOfOne(whole({ ...still, slideMm: one.slideMm * more }));
        for (const better of [push, soft, slide]) expect(better).toBeGreaterThanOrEqual(base - 0.005);
      }),
      { numRuns: 150 },
    );
  });
});

describe('a plan', () => {
  test('more area never takes fewer bags; low, plan and high rise', () => {
    fc.assert(
      fc.property(side, side, between(1, 60), (lengthMm, widthMm, areaM2) => {
        const one = areaOf({ lengthMm, widthMm }, { areaM2 });
        const more = areaOf({ lengthMm, widthMm }, { areaM2: areaM2 * 1.5 });
        expect(more.bags.plan).toBeGreaterThanOrEqual(one.bags.plan);
        expect(one.bags.low).toBeLessThanOrEqual(one.bags.plan);
        expect(one.bags.plan).toBeLessThanOrEqual(one.bags.high);
      }),
      few,
    );
  });
  test('a tile turned on the floor is the same tile', () => {
    fc.assert(
      fc.property(side, side, (lengthMm, widthMm) => {
        const one = areaOf({ lengthMm, widthMm });
        const turned = areaOf({ lengthMm: widthMm, widthMm: lengthMm });
        expect(turned.notch).toEqual(one.notch);
        expect(turned.flatnessRequired.rule).toBe(one.flatnessRequired.rule);
        expect(turned.minJointMm).toBe(one.minJointMm);
        expect(turned.predicted.median).toBe(one.predicted.median);
        if (lengthMm !== widthMm) expect(Math.abs(turned.comb.directionDeg - one.comb.directionDeg)).toBe(90);
      }),
      few,
    );
  });
  test('a longer tile never needs less bed', () => {
    fc.assert(
      fc.property(side, between(1, 3), (lengthMm, times) => {
        const short = areaOf({ lengthMm, widthMm: 100 });
        const long = areaOf({ lengthMm: lengthMm * times, widthMm: 100 });
        expect(long.bedNeedMm.total).toBeGreaterThanOrEqual(short.bedNeedMm.total - 1e-9);
      }),
      few,
    );
  });
  test('headline bags are in proportion to the area', () => {
    fc.assert(
      fc.property(between(1, 100), (m2) => {
        expect(labelBags(2 * m2, 3, 25)).toBeCloseTo(2 * labelBags(m2, 3, 25), 9);
      }),
    );
  });
});

/** Ways to choose k of n. */
function ways(n: number, k: number): number {
  if (k > n) return 0;
  let count = 1;
  for (let i = 0; i < k; i += 1) count = (count * (n - i)) / (i + 1);
  return count;
}

describe('what a sample tells', () => {
  test('is exact: counted ways over counted ways', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 60 }), fc.nat(60), fc.integer({ min: 1, max: 10 }), (all, bad, lifted) => {
        fc.pre(bad <= all && lifted <= all);
        expect(chanceAllGood(all, bad, lifted)).toBeCloseTo(ways(all - bad, lifted) / ways(all, lifted), 9);
      }),
    );
  });
  test('nears the binomial on a great floor, and is the binomial on an endless one', () => {
    expect(stillBad(50_000, 3).share).toBeCloseTo(1 - 0.05 ** (1 / 3), 3);
    expect(stillBad(1_000_000, 3)).toEqual({ share: 1 - 0.05 ** (1 / 3), method: 'binomial' });
  });
  test('names the last share that is still likely', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 400 }), fc.integer({ min: 1, max: 5 }), (all, lifted) => {
        const bad = Math.round(stillBad(all, lifted).share * all);
        expect(chanceAllGood(all, bad + 1, lifted)).toBeLessThan(0.05);
        if (bad > 0) expect(chanceAllGood(all, bad, lifted)).toBeGreaterThanOrEqual(0.05);
      }),
    );
  });
});

test('mortar that has nowhere else to go rises by its volume', () => {
  fc.assert(
    fc.property(between(15, 60), between(1, 5), between(0, 3), (piece, joint, over) => {
      const rise = riseInJoints({
        combedMm: 2.4 + over,
        bedMm: 2.4,
        pieceLengthMm: piece,
        pieceWidthMm: piece,
        jointMm: joint,
      });
      const openings = (piece + joint) ** 2 - piece ** 2;
      expect(Math.abs(rise * openings - over * (piece + joint) ** 2)).toBeLessThan(1e-6);
    }),
  );
});
