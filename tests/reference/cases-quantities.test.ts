import { describe, expect, test } from 'vitest';

import { bagYield } from '@sim/estimate/bags.ts';
import { bedAt, nameNotch } from '@sim/estimate/notches.ts';
import { partBagWater } from '@sim/mortar/bag.ts';
import { IN } from './rules-checks/check.ts';
import { areaOf, jobOf, planOf, square } from './rules-checks/jobs.ts';

const notch = (width: number, depth: number) =>
  nameNotch({ shape: 'square', widthMm: width * IN, depthMm: depth * IN, toothMm: width * IN });
const quarter = notch(1 / 4, 1 / 4);
const asked = ({ shape, widthMm, depthMm, toothMm }: ReturnType<typeof notch>) => ({
  instructions: { notch: { shape, widthMm, depthMm, toothMm } },
});

describe('how much', () => {
  test('473 ft² of 13 in tile with two bags: far too few', () => {
    const area = { areaM2: 44 };
    const mortar = { mortar: { bagsAtHand: 2 } };
    const small = planOf(square(13), area, { ...mortar, ...asked(quarter) });
    expect(small.bags.plan).toBeGreaterThanOrEqual(5);
    expect(small.bags.plan).toBeLessThanOrEqual(8);
    const alarm = small.findings.find((one) => one.rule === 'bags.spread' && one.severity === 'stop');
    expect(alarm?.says).toContain('Bags at hand: 2');
    const ours = planOf(square(13), area, mortar);
    expect(ours.bags.low).toBeLessThanOrEqual(8);
    expect(ours.bags.labelWouldSay).toBeGreaterThanOrEqual(5);
    expect(ours.bags.labelWouldSay).toBeLessThanOrEqual(8);
  });

  test('200 ft² with a 1/4 × 3/8: 4 bags', () => {
    expect(areaOf(square(12), { areaM2: 18.6 }).bags.plan).toBe(4);
  });

  test.each([
    [1 / 4, 1 / 4, 2.1, 3.5],
    [1 / 4, 3 / 8, 2.6, 4.7],
    [1 / 2, 1 / 2, 4.1, 7],
    [3 / 4, 3 / 4, 5.2, 9.4],
  ])('powder by notch, %d × %d in', (width, depth, least, most) => {
    const made = bagYield(jobOf(square(12)).mortar);
    const kgM2 = (bedAt(notch(width, depth), 45) * 22.7) / made.usual;
    expect(kgM2).toBeGreaterThanOrEqual(least);
    expect(kgM2).toBeLessThanOrEqual(most);
  });

  test('2 kg of a mix that takes 3 L to 10 kg: 0.60 L', () => {
    expect(partBagWater(2, 3 / 10)).toBeCloseTo(0.6, 2);
  });

  test('45 minutes a tile: spread for one', () => {
    for (const minPerTile of [45, 50]) {
      expect(areaOf(square(24), {}, { crew: { minPerTile } }).spreadAhead).toBe(1);
    }
    // Tiles ahead are open time over pace, rounded down.
    const plan = areaOf(square(24), {}, { crew: { minPerTile: 6, temperatureC: 23 } });
    expect(plan.openMin).toBeCloseTo(20, 9);
    expect(plan.spreadAhead).toBe(3);
  });
});
