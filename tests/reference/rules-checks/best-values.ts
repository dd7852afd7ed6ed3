import { expect } from 'vitest';

import { coverageToReach, type CoveragePlace } from '@sim/estimate/coverage-to-reach.ts';
import { dinDip, dipAllowed, flatnessToReach } from '@sim/estimate/flatness.ts';
import type { Area } from '@sim/estimate/job-types.ts';
import { jointLimit, lippageLimit, offsetLimit } from '@sim/estimate/joint-limits.ts';
import { lippageShare } from '@sim/tile/lippage.ts';
import { bagFromFloorKg, liftLimitKg } from '@sim/estimate/lifting.ts';
import { movementJoints } from '@sim/estimate/movement.ts';
import { allowedWarp } from '@sim/estimate/tile-facts.ts';
import { wallLimit } from '@sim/estimate/wall-load.ts';
import { bedAt } from '@sim/estimate/notches.ts';
import { valueOf } from '@sim/rules/rulebook.ts';
import { check, FT, FT2, IN, IN2, LB } from './check.ts';
import { alike, areaOf, jobOf, judged, oblong, planOf, square } from './jobs.ts';

const place = (more: Partial<CoveragePlace> = {}): CoveragePlace => ({
  standards: 'north-america',
  exposure: 'interior-dry',
  surface: 'floor',
  kind: 'tile',
  thicknessMm: 9,
  ...more,
});
const reach = (more?: Partial<CoveragePlace>): number => coverageToReach(place(more)).value;
const areaFrom = (tile: Record<string, unknown>, area: Record<string, unknown> = {}): Area =>
  jobOf(tile, area).areas[0] as Area;
const NA = 'north-america';
const warp = (inches: number, edge: string, material = 'porcelain'): number =>
  allowedWarp(areaFrom({ ...square(inches), edge, material }).tile, inches * IN, NA).mm;

/** The thirty figures that matter most, each through the code that uses it. */
export const bestValues = [
  check('1. Interior dry, 80 %', 'ANSI A108.5 2.2.3', () => {
    expect(reach()).toBe(0.8);
    expect(areaOf(square(12)).minCoverage).toBe(0.8);
  }),
  check('2. Wet or exterior, 95 %', 'ANSI A108.5 2.2.3', () => {
    expect(reach({ exposure: 'interior-wet' })).toBe(0.95);
    expect(reach({ exposure: 'exterior' })).toBe(0.95);
    expect(reach({ exposure: 'submerged' })).toBe(0.95);
  }),
  check('3. Panels: walls 80 %, floors 85 %', 'ANSI A108.19', () => {
    expect(reach({ kind: 'panel', surface: 'wall' })).toBe(0.8);
    expect(reach({ kind: 'panel', surface: 'floor' })).toBe(0.85);
    expect(areaOf({ lengthMm: 2400, widthMm: 1200, thicknessMm: 6 }).minCoverage).toBe(0.85);
  }),
  check('4. Panels: no void over 2 in²', 'ANSI A108.19', () => {
    const panel = (areaMm2: number) =>
      judged({ kind: 'panel', pulls: alike(3, { coverage: 0.9, voids: [{ areaMm2 }] }) }).verdict;
    expect(panel(2 * IN2 - 5)).toBe('pass');
    expect(panel(2 * IN2 + 5)).toBe('fail');
  }),
  check('5. At least three tiles', 'ANSI A108.5', () => {
    expect(judged({ pulls: alike(2, { coverage: 0.9 }) }).verdict).toBe('not-enough');
    expect(judged({ pulls: alike(3, { coverage: 0.9 }) }).verdict).toBe('pass');
    expect(areaOf(square(12)).pull.tiles).toBe(3);
  }),
  check('6. Least bed 3/32 in', 'ANSI A108.5 2.2.2', () => {
    expect(areaOf(square(12)).bedLimitMm.least).toBeCloseTo((3 / 32) * IN, 6);
    expect(judged({ bedMm: 2.3, pulls: alike(3, { coverage: 0.9 }) }).verdict).toBe('fail');
    expect(judged({ bedMm: 2.4, pulls: alike(3, { coverage: 0.9 }) }).verdict).toBe('pass');
  }),
  check('7. Thin-set to 1/4 in, large-and-heavy to 1/2 in', 'trade article citing standards', () => {
    expect(areaOf(square(6)).bedLimitMm.most).toBeCloseTo(IN / 4, 9);
    expect(areaOf(square(24)).bedLimitMm.most).toBeCloseTo(IN / 2, 9);
    expect(judged({ bedMm: 6.3, pulls: alike(3, { coverage: 0.9 }) }).verdict).toBe('pass');
    expect(judged({ bedMm: 6.5, pulls: alike(3, { coverage: 0.9 }) }).verdict).toBe('fail');
    expect(judged({ kind: 'stone', bedMm: 12.6, pulls: alike(3, { coverage: 0.96 }) }).verdict).toBe('pass');
    expect(judged({ kind: 'stone', bedMm: 12.8, pulls: alike(3, { coverage: 0.96 }) }).verdict).toBe('fail');
  }),
  check('8. Australia 65 / 80 / 90 %', 'AS 3958.1-2007 5.6.4', () => {
    expect(
      (['coverage.as-house-wall', 'coverage.as-house-floor', 'coverage.as-wet'] as const).map((id) =>
        valueOf(id, 'share'),
      ),
    ).toEqual([0.65, 0.8, 0.9]);
  }),
  check('9. Italy 90 / 95 %', 'UNI 11493-1 term 3.50', () => {
    expect(reach({ standards: 'iso-en' })).toBe(0.9);
    expect(reach({ standards: 'iso-en', exposure: 'exterior' })).toBe(0.95);
  }),
  check('10. Blade at 45° or more', 'ANSI A108.19 13.7', () => {
    expect(areaOf({ lengthMm: 2400, widthMm: 1200, thicknessMm: 6 }).comb.angleDeg).toBeGreaterThanOrEqual(45);
    expect(areaOf(square(24)).comb.angleDeg).toBe(45);
  }),
  check('11. 1/4 × 1/4 ridges flattened leave 1/8 in', 'trade article on mosaics', () => {
    const quarter = { shape: 'square', widthMm: IN / 4, depthMm: IN / 4, toothMm: IN / 4 } as const;
    expect(bedAt(quarter, 90)).toBeCloseTo(IN / 8, 9);
    expect(valueOf('bed.flattened', 'bed')).toBeCloseTo(IN / 8, 9);
  }),
  check('12. The laboratory trowel, 6 × 6 at 12 mm, leaves 3.0 mm flattened', 'EN 1347 5.4; 3.0 by geometry', () => {
    const [width, pitch] = [valueOf('trowel.lab', 'width'), valueOf('trowel.lab', 'pitch')];
    const lab = { shape: 'square', widthMm: width, depthMm: width, toothMm: pitch - width } as const;
    expect(bedAt(lab, 90)).toBeCloseTo(3, 9);
  }),
  check('13. and 14. Rectified edge: lesser of 0.40 % and 0.05 in', 'ANSI A137.1 example', () => {
    expect(warp(8, 'rectified') / IN).toBeCloseTo(0.032, 9);
    expect(warp(24, 'rectified') / IN).toBeCloseTo(0.05, 9);
  }),
  check('15. Rectified diagonal: 0.40 % or 1.8 mm', 'ANSI A137.1 as listed by an inspection site', () => {
    expect([valueOf('warp.rectified-diagonal', 'share'), valueOf('warp.rectified-diagonal', 'most')]).toEqual([
      0.004, 1.8,
    ]);
  }),
  check('16. Calibrated pressed floor: 0.75 % or 0.08 in', 'ANSI A137.1:2022', () => {
    expect(warp(4, 'calibrated', 'ceramic') / IN).toBeCloseTo(0.03, 9);
    expect(warp(16, 'calibrated', 'ceramic') / IN).toBeCloseTo(0.08, 9);
  }),
  check('17. EN 14411 BIa: 0.5 % to 2 mm, rectified 0.4 % to 1.8 mm', 'maker’s table of annex G', () => {
    const iso = (mm: number, edge: string): number =>
      allowedWarp(areaFrom({ lengthMm: mm, widthMm: mm, edge }).tile, mm, 'iso-en').mm;
    expect([iso(300, 'calibrated'), iso(600, 'calibrated')]).toEqual([1.5, 2]);
    expect(iso(300, 'rectified')).toBeCloseTo(1.2, 12);
    expect(iso(600, 'rectified')).toBe(1.8);
  }),
  check('18. BIII: + 0.5 / − 0.3 %, at most + 2.0 / − 1.5 mm', 'EN 14411 annex L', () => {
    const wall = (name: 'outShare' | 'outMost' | 'inShare' | 'inMost') => valueOf('iso.wall-curvature', name);
    expect([wall('outShare'), wall('inShare'), wall('outMost'), wall('inMost')]).toEqual([0.005, 0.003, 2, 1.5]);
  }),
  check('19. and 20. Lippage 1/32 under, 1/16 from 1/4 in', 'ANSI A108.02 4.3.7', () => {
    const lip = (jointMm: number, bow: number | null = null): number =>
      lippageLimit(areaFrom({ ...square(12), measuredBowMm: bow }, { jointMm }), NA)?.value ?? 0;
    expect(lip(IN / 8)).toBeCloseTo(IN / 32, 9);
    expect(lip(0.24 * IN)).toBeCloseTo(IN / 32, 9);
    expect(lip(IN / 4)).toBeCloseTo(IN / 16, 9);
    expect(lip(IN / 8, 0.5)).toBeCloseTo(IN / 32 + 0.5, 9);
  }),
  check('21. Joint: three times the variation, 1/16 in at least', 'ANSI A108.02 4.3.8', () => {
    const joint = (sizeVariationMm: number): number =>
      jointLimit(areaFrom({ ...square(12), sizeVariationMm }), NA)?.value ?? 0;
    expect(joint(IN / 16)).toBeCloseTo((3 / 16) * IN, 9);
    expect(joint(0)).toBeCloseTo(IN / 16, 9);
  }),
  check('22. Running bond over 15 in: 1/8 or 3/16 in and the warp', 'ANSI A108.02 4.3.8.1', () => {
    const bond = (edge: string, bow: number, length = 24): number =>
      jointLimit(
        areaFrom({ ...oblong(length, 12), edge, measuredBowMm: bow }, { pattern: 'offset', offsetShare: 1 / 3 }),
        NA,
      )?.value ?? 0;
    expect(bond('rectified', IN / 32)).toBeCloseTo((5 / 32) * IN, 9);
    expect(bond('calibrated', 0)).toBeCloseTo((3 / 16) * IN, 9);
    expect(bond('rectified', 0, 15)).toBeCloseTo(IN / 16, 9);
    expect(bond('rectified', 0, 15.2)).toBeCloseTo(IN / 8, 9);
  }),
  check('23. Offset at most a third over 15 in', 'ANSI A108.02 4.3.8.2', () => {
    const most = (length: number) => offsetLimit(areaFrom(oblong(length, 8), { pattern: 'offset' }), NA).share;
    expect(most(48) * 48).toBeCloseTo(16, 9);
    expect(most(15)).toBe(0.5);
    expect(most(15.2)).toBeCloseTo(1 / 3, 9);
  }),
  check('24. and 25. Flatness by the edge of 15 in', 'ANSI A108.01/.02', () => {
    const at = (inches: number, overMm: number): number => {
      const area = areaFrom(square(inches), { flatnessOverMm: overMm });
      return dipAllowed(flatnessToReach(area, NA).limit, overMm);
    };
    expect(at(24, 10 * FT)).toBeCloseTo(IN / 8, 9);
    expect(at(24, 24 * IN)).toBeCloseTo(IN / 16, 9);
    expect(at(12, 10 * FT)).toBeCloseTo(IN / 4, 9);
    expect(at(12, 12 * IN)).toBeCloseTo(IN / 16, 9);
    expect(at(15, 10 * FT)).toBeCloseTo(IN / 8, 9);
    expect(at(14.8, 10 * FT)).toBeCloseTo(IN / 4, 9);
  }),
  check('26. DIN 18202 row 3, and 6 mm at 2 m', 'DIN 18202 table 3', () => {
    const at = [100, 1000, 2000, 3000, 4000, 10000, 15000].map((over) => dinDip('flatness.din-3', over));
    expect(at).toEqual([2, 4, 6, 8, 10, 12, 15]);
  }),
  check('27. Rates per 50 lb: 80–100, 60–80, 40–50 ft²', 'general how-to articles, a band and no law', () => {
    const rates = (['rate.quarter-square', 'rate.quarter-three-eighths', 'rate.half-square'] as const).map((id) => [
      Math.round(valueOf(id, 'least') / FT2),
      Math.round(valueOf(id, 'most') / FT2),
    ]);
    expect(rates).toEqual([
      [80, 100],
      [60, 80],
      [40, 50],
    ]);
  }),
  check('28. Metric rates: 3, 6, 7–8 kg/m², 1.2 a millimetre', 'article based on SANS 10107', () => {
    expect([
      valueOf('rate.sans-wall', 'rate'),
      valueOf('rate.sans-floor', 'rate'),
      valueOf('rate.sans-large', 'least'),
      valueOf('rate.sans-large', 'most'),
      valueOf('rate.dry-per-mm', 'rate'),
    ]).toEqual([3, 6, 7, 8, 1.2]);
  }),
  check('29. C1 0.5, C2 1.0 N/mm²; 20, 10, 30 min; T 0.5 mm; S1 2.5, S2 5 mm', 'EN 12004', () => {
    expect([valueOf('class.c1', 'strength'), valueOf('class.c2', 'strength')]).toEqual([0.5, 1]);
    expect((['normal', 'fast', 'extended'] as const).map((name) => valueOf('class.open', name))).toEqual([20, 10, 30]);
    expect([valueOf('class.t', 'slip'), valueOf('class.s', 's1'), valueOf('class.s', 's2')]).toEqual([0.5, 2.5, 5]);
  }),
  check('30. Movement joints 20–25 ft, 8–12 ft outdoors and in sun', 'TCNA EJ171', () => {
    const apart = (area: Record<string, unknown>) => {
      const { leastMm, mostMm } = movementJoints(areaFrom(square(12), area), NA);
      return [Math.round(leastMm / FT), Math.round(mostMm / FT)];
    };
    expect(apart({})).toEqual([20, 25]);
    expect(apart({ exposure: 'exterior' })).toEqual([8, 12]);
    expect(apart({ sun: true })).toEqual([8, 12]);
  }),
  check('30. Lifting: 51 lb at best, 39.5 lb from the floor', 'NIOSH 94-110', () => {
    expect(liftLimitKg({ reachMm: 254, fromMm: 762, travelMm: 254, turnDeg: 0 }) / LB).toBeCloseTo(51, 1);
    expect(bagFromFloorKg() / LB).toBeCloseTo(39.5, 1);
    expect(liftLimitKg({ reachMm: 508, fromMm: 762, travelMm: 254, turnDeg: 0 }) / LB).toBeCloseTo(25.5, 1);
    expect(liftLimitKg({ reachMm: 254, fromMm: 762, travelMm: 762, turnDeg: 45 }) / LB).toBeCloseTo(
      51 * (0.82 + 1.8 / 30) * (1 - 0.0032 * 45),
      1,
    );
    const says = (bagKg: number) =>
      planOf(square(12), {}, { mortar: { bagKg } }).findings.find((one) => one.rule === 'safety.lifting')?.severity;
    expect([says(22.7), says(11)]).toEqual(['warn', 'note']);
  }),
  check('30. A turned lift loses what the table of asymmetry prints for each 15°', 'NIOSH 94-110', () => {
    const straight = liftLimitKg({ reachMm: 254, fromMm: 762, travelMm: 254, turnDeg: 0 });
    const kept = [0, 15, 30, 45, 60, 75, 90, 105, 120, 135].map(
      (turnDeg) => liftLimitKg({ reachMm: 254, fromMm: 762, travelMm: 254, turnDeg }) / straight,
    );
    const table = [1, 0.95, 0.9, 0.86, 0.81, 0.76, 0.71, 0.66, 0.62, 0.57];
    kept.forEach((share, at) => expect(share).toBeCloseTo(table[at]!, 2));
  }),
  check('30. Silica 50 and 25 µg/m³ are said on every sheet', 'OSHA 29 CFR 1926.1153', () => {
    const said = planOf(square(12)).findings.find((one) => one.rule === 'safety.silica')?.says;
    expect(said).toContain('50 µg/m³');
    expect(said).toContain('25 µg/m³');
  }),
  check('Wall limits', 'UK technical pages', () => {
    const found = (['plaster', 'drywall', 'plywood', 'gypsum-fibre', 'cement-board', 'foam-board'] as const).map(
      wallLimit,
    );
    expect(found).toEqual([20, 32, 30, 40, 50, 60]);
  }),
  check('Lippage of a smooth bow: 1, 0.89, 0.75, 0.64, 0.36', '4f(1−f), geometry of a parabola', () => {
    expect([1 / 2, 1 / 3, 1 / 4, 1 / 5, 1 / 10].map((f) => Number(lippageShare(f).toFixed(2)))).toEqual([
      1, 0.89, 0.75, 0.64, 0.36,
    ]);
    expect(valueOf('lippage.bow', 'half')).toBeCloseTo(lippageShare(1 / 2), 12);
    expect(valueOf('lippage.bow', 'third')).toBeCloseTo(lippageShare(1 / 3), 12);
  }),
];
