import { describe, expect, test } from 'vitest';

import { bagsFor, bagYield, labelBags } from '@sim/estimate/bags.ts';
import { layerRecipes } from '@sim/estimate/layers.ts';
import { bedAt, nameNotch } from '@sim/estimate/notches.ts';
import { areaPerBag, partBagWater, powderKgPerLitre } from '@sim/mortar/bag.ts';
import type { Area } from '@sim/estimate/job-types.ts';
import { type RuleId, valueOf } from '@sim/rules/rulebook.ts';
import { FT2, IN } from './rules-checks/check.ts';
import { areaOf, jobOf, square } from './rules-checks/jobs.ts';

const notch = (width: number, depth: number) =>
  nameNotch({ shape: 'square', widthMm: width * IN, depthMm: depth * IN, toothMm: width * IN });
const quarter = notch(1 / 4, 1 / 4);
const deep = notch(1 / 4, 3 / 8);
const half = notch(1 / 2, 1 / 2);
const published = [
  [quarter, 'rate.quarter-square'],
  [deep, 'rate.quarter-three-eighths'],
  [half, 'rate.half-square'],
] as const satisfies readonly (readonly [unknown, RuleId])[];

/** Area a 50 lb bag covers by geometry, density and water alone: poorest and richest mix at a blade angle. */
function band(one: ReturnType<typeof notch>, angle: number): [number, number] {
  const made = bagYield(jobOf(square(12)).mortar);
  const bed = bedAt(one, angle);
  return [areaPerBag(made.least, bed), areaPerBag(made.most, bed)];
}

describe('published bag rates from geometry, fresh density and water', () => {
  test.each(published)('%o at 45° overlaps its published band', (one, rule) => {
    const [least, most] = band(one, 45);
    const printed: [number, number] = [valueOf(rule, 'least'), valueOf(rule, 'most')];
    expect(least).toBeLessThan(printed[1]);
    expect(most).toBeGreaterThan(printed[0]);
    // Within a sixth of the printed middle: the headline is a 45° blade and a mortar that yields much.
    expect(most / ((printed[0] + printed[1]) / 2)).toBeGreaterThan(0.94);
    expect(most / ((printed[0] + printed[1]) / 2)).toBeLessThan(1.17);
  });
  test('1/4 × 1/4 at 45° gives the printed 80–100 ft² nearly to the foot', () => {
    const [least, most] = band(quarter, 45).map((m2) => m2 / FT2) as [number, number];
    expect(least).toBeCloseTo(81.6, 0);
    expect(most).toBeCloseTo(101, 0);
  });
  test('a 60° blade lays down 22 % more, so a bag goes 18 % less far (sin 60° over sin 45°)', () => {
    for (const [one] of published) {
      expect(band(one, 45)[0] / band(one, 60)[0]).toBeCloseTo(Math.sqrt(1.5), 9);
    }
  });
  test('90–100 ft² from a 1/4 × 1/4 is under the least bed unless the mortar is light (trade cross-check)', () => {
    // At 0.50, 0.55, 0.60, 0.65 and 0.70 ft³ a bag a 3/32 in bed covers at most 64, 70, 77, 83 and 90 ft².
    const feet3 = 0.028316846592 * 1000;
    const covers = [0.5, 0.55, 0.6, 0.65, 0.7].map((share) =>
      Math.round(areaPerBag(share * feet3, valueOf('bed.least', 'bed')) / FT2),
    );
    expect(covers).toEqual([64, 70, 77, 83, 90]);
  });
  test('powder to a millimetre of bed: 1.14–1.23 kg/m² (two sheets), 1.2 (SANS-based article)', () => {
    const ends = [
      powderKgPerLitre({ waterLPerKg: 0.3, densityKgM3: 1480 }),
      powderKgPerLitre({ waterLPerKg: 0.3, densityKgM3: 1600 }),
    ];
    expect(ends[0]).toBeCloseTo(1.14, 2);
    expect(ends[1]).toBeCloseTo(1.23, 2);
    expect(powderKgPerLitre({ waterLPerKg: 0.25, densityKgM3: 1500 })).toBeCloseTo(
      valueOf('rate.dry-per-mm', 'rate'),
      9,
    );
  });
  test('W14 20 kg at 3, 6 and 7–8 kg/m²: 6.7, 3.3, 2.5–2.9 m² (SANS-based article)', () => {
    const area = (rate: number): number => Number((20 / rate).toFixed(1));
    expect(area(valueOf('rate.sans-wall', 'rate'))).toBe(6.7);
    expect(area(valueOf('rate.sans-floor', 'rate'))).toBe(3.3);
    expect([area(valueOf('rate.sans-large', 'most')), area(valueOf('rate.sans-large', 'least'))]).toEqual([2.5, 2.9]);
  });
  test('W15 6 kg/m² on a 5 mm bed is 1.2 a millimetre', () => {
    expect(valueOf('rate.sans-floor', 'rate') / valueOf('bed.sans-solid', 'bed')).toBeCloseTo(
      valueOf('rate.dry-per-mm', 'rate'),
      12,
    );
  });
  test('6, 8, 10, 12 mm notches at 60°: 3.1, 4.2, 5.2, 6.2 kg/m² (geometry)', () => {
    const rates = [6, 8, 10, 12].map((mm) => {
      const one = nameNotch({ shape: 'square', widthMm: mm, depthMm: mm, toothMm: mm });
      return Number((bedAt(one, 60) * valueOf('rate.dry-per-mm', 'rate')).toFixed(1));
    });
    expect(rates).toEqual([3.1, 4.2, 5.2, 6.2]);
  });
  test('what headlines reckon with is 0.75–0.87 kg/m² a millimetre of upright bed, from the printed rates', () => {
    for (const [one, rule] of published) {
      const perMm = (m2: number): number => 22.7 / m2 / bedAt(one, 90);
      const middle = (perMm(valueOf(rule, 'least')) + perMm(valueOf(rule, 'most'))) / 2;
      expect(middle).toBeGreaterThan(valueOf('rate.label', 'least') * 0.96);
      expect(middle).toBeLessThan(valueOf('rate.label', 'most') * 1.04);
    }
  });
});

describe('bags', () => {
  const area = (m2: number): Area => jobOf(square(12), { areaM2: m2 }).areas[0] as Area;
  const bags = (m2: number, one: ReturnType<typeof notch>) =>
    bagsFor(m2, layerRecipes(area(m2), 'north-america', one, 'none'), jobOf(square(12)));
  test('W13 200 ft² at 65 ft² a bag: 3.07, so 4 (how-to article)', () => {
    const m2 = 200 * FT2;
    expect(Math.floor((100 * m2) / (65 * FT2)) / 100).toBe(3.07);
    const found = bags(m2, deep);
    expect(found.plan).toBe(4);
    expect(found.exact.plan).toBeGreaterThan(2.5 * 1.1);
    expect(found.exact.plan).toBeLessThan(3.4 * 1.1);
    expect(labelBags(m2, bedAt(deep, 90), 22.7)).toBeGreaterThan(2.9);
    expect(found.labelWouldSay).toBe(4);
  });
  test('low, plan and high rise, and every part bag is rounded up', () => {
    const found = bags(37, half);
    expect(found.low).toBeLessThanOrEqual(found.plan);
    expect(found.plan).toBeLessThanOrEqual(found.high);
    for (const name of ['low', 'plan', 'high'] as const) {
      expect(found[name]).toBe(Math.ceil(found.exact[name]));
    }
  });
  test('a yield on the sheet takes the place of our reckoning', () => {
    const job = jobOf(square(12), {}, { mortar: { yieldLPerBag: 20 }, wasteShare: 0 });
    const found = bagsFor(20, layerRecipes(area(20), 'north-america', deep, 'none'), job);
    expect(found.exact.plan).toBeCloseTo(bedAt(deep, 45), 9);
  });
  test('part-bag water goes by weight: 2 kg of a mix of 3 L to 10 kg takes 0.60 L (maker’s ratio)', () => {
    expect(partBagWater(2, 3 / 10)).toBeCloseTo(0.6, 12);
    const plan = areaOf(square(12), { areaM2: 1 }, { mortar: { bagKg: 10, waterLPerBag: 3 } });
    const { powderKg, waterL, partBag } = plan.batches;
    expect(waterL / powderKg).toBeCloseTo(0.3, 9);
    expect(partBag.powderKg === 0 || Math.abs(partBag.waterL / partBag.powderKg - 0.3) < 1e-9).toBe(true);
  });
});
