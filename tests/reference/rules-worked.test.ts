import { describe, expect, test } from 'vitest';

import { dinDip } from '@sim/estimate/flatness.ts';
import { jointLimit, lippageLimit, offsetLimit } from '@sim/estimate/joint-limits.ts';
import type { Area } from '@sim/estimate/job-types.ts';
import { bedAt } from '@sim/estimate/notches.ts';
import { allowedWarp } from '@sim/estimate/tile-facts.ts';
import { valueOf } from '@sim/rules/rulebook.ts';
import { bondShare, facialSize } from '@sim/estimate/worked.ts';
import { IN, PSI } from './rules-checks/check.ts';
import { areaOf, jobOf, oblong, square } from './rules-checks/jobs.ts';

const NA = 'north-america';
const first = (tile: Record<string, unknown>, area: Record<string, unknown> = {}): Area =>
  jobOf(tile, area).areas[0] as Area;
const warp = (inches: number, edge: string, set: 'north-america' | 'iso-en' = NA): number =>
  allowedWarp(first({ ...square(inches), edge }).tile, inches * IN, set).mm;

describe('published worked examples', () => {
  test('W1 rectified edge of 8 in: 0.032, printed 0.03 in (TCNA page on A137.1)', () => {
    expect(warp(8, 'rectified') / IN).toBeCloseTo(0.032, 9);
  });
  test('W2 rectified 24 in: 0.096 but capped at 0.05 in (TCNA page on A137.1)', () => {
    expect(24 * valueOf('warp.rectified', 'share')).toBeCloseTo(0.096, 9);
    expect(warp(24, 'rectified') / IN).toBeCloseTo(0.05, 9);
  });
  test('W3 rectified facial size about an 8 in average: 7.98–8.02 (TCNA page)', () => {
    const { leastMm, mostMm } = facialSize(8 * IN);
    expect([leastMm / IN, mostMm / IN].map((one) => one.toFixed(2))).toEqual(['7.98', '8.02']);
  });
  test('W4 rectified facial size about 24 in: ± 0.03 in cap (TCNA page)', () => {
    const { leastMm, mostMm } = facialSize(24 * IN);
    expect((mostMm - leastMm) / 2 / IN).toBeCloseTo(0.03, 9);
  });
  test('W5 the superseded limits of 1988: 0.24 in and 0.255 in for 24 in (trade article)', () => {
    expect(24 * valueOf('warp.old-paver', 'edge')).toBeCloseTo(0.24, 9);
    expect(24 * Math.SQRT2 * valueOf('warp.old-paver', 'diagonal')).toBeCloseTo(0.255, 3);
  });
  test('W6 rectified porcelain 6 in edge: 0.6 mm, exact 0.61 (care guide)', () => {
    expect(warp(6, 'rectified')).toBeCloseTo(0.61, 2);
  });
  test('W7 variation of 1/16 in asks for a 3/16 in joint (A108.02-2017 4.3.8)', () => {
    expect(jointLimit(first({ ...square(12), sizeVariationMm: IN / 16 }), NA)?.value).toBeCloseTo((3 / 16) * IN, 9);
  });
  test('W8 running bond 12 × 24 rectified, warp 1/32: 5/32 in (consultant citing 4.3.8.1)', () => {
    const area = first({ ...oblong(24, 12), edge: 'rectified', measuredBowMm: IN / 32 }, { pattern: 'offset' });
    expect(jointLimit(area, NA)?.value).toBeCloseTo((5 / 32) * IN, 9);
  });
  test('W9 12 × 24 at a 1/8 in joint: 1/32 in (trade article)', () => {
    expect(lippageLimit(first(oblong(24, 12), { jointMm: IN / 8 }), NA)?.value).toBeCloseTo(IN / 32, 9);
  });
  test('W10 warp 1/32 at a joint under 1/4: 1/16 in (consultant)', () => {
    const area = first({ ...square(12), measuredBowMm: IN / 32 }, { jointMm: IN / 8 });
    expect(lippageLimit(area, NA)?.value).toBeCloseTo(IN / 16, 9);
  });
  test('W11 and W12 200 and 400 psi at 80 %: 160 and 320 psi (trade article 2018)', () => {
    expect(bondShare(valueOf('class.a118-4', 'strength'), 0.8) / PSI).toBeCloseTo(160, 0);
    expect(bondShare(valueOf('class.a118-15', 'strength'), 0.8) / PSI).toBeCloseTo(320, 0);
  });
  test('W16 a third of 48 in is 16 in (retailer guide)', () => {
    expect(offsetLimit(first(oblong(48, 8), { pattern: 'offset' }), NA).share * 48).toBeCloseTo(16, 9);
  });
  test('W17 1/4 × 1/4 ridges flattened leave 1/8 in (trade article)', () => {
    const quarter = { shape: 'square', widthMm: IN / 4, depthMm: IN / 4, toothMm: IN / 4 } as const;
    expect(bedAt(quarter, 90)).toBeCloseTo(valueOf('bed.flattened', 'bed'), 9);
  });
  test('W18 DIN 18202 row 3 at 2 m: 6 mm (extended table)', () => {
    expect(dinDip('flatness.din-3', 2000)).toBe(6);
  });
  test('W19 a page reads 0.5 % of 600 mm as 3 mm: the cap of 2 mm applies (EN 14411)', () => {
    const area = first({ lengthMm: 600, widthMm: 600, edge: 'calibrated' });
    expect(allowedWarp(area.tile, 600, 'iso-en').mm).toBe(2);
    expect(600 * valueOf('iso.flatness', 'share')).toBe(3);
  });
  test('the plan carries them: 12 × 24 rectified at half bond may show its whole cap', () => {
    const plan = areaOf({ ...oblong(24, 12), edge: 'rectified' }, { pattern: 'offset', offsetShare: 0.5 });
    expect(plan.expectedLippageMm).toBeCloseTo(0.05 * IN, 9);
    expect(plan.maxOffsetShare).toBeCloseTo(1 / 3, 9);
  });
});
