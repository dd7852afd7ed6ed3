import { describe, expect, test } from 'vitest';

import type { Area } from '@sim/estimate/job-types.ts';
import { bagYield } from '@sim/estimate/bags.ts';
import { judgeNotch } from '@sim/estimate/choose-notch.ts';
import { bedNeed } from '@sim/estimate/bed-need.ts';
import { airPathMm, bareStripContact, crownContact, dabContact, restingContact } from '@sim/estimate/contact.ts';
import { leastFall } from '@sim/estimate/floor-plan.ts';
import { lippageShare } from '@sim/tile/lippage.ts';
import { bedAt, nameNotch } from '@sim/estimate/notches.ts';
import { coverageOfOne } from '@sim/estimate/spread/one-bed.ts';
import { spreadQuestion } from '@sim/estimate/predict.ts';
import { predictSpread } from '@sim/estimate/spread/spread.ts';
import { riseInJoints } from '@sim/mortar/squeeze-up.ts';
import { valueOf } from '@sim/rules/rulebook.ts';
import { FT2, IN } from './rules-checks/check.ts';
import { areaOf, jobOf, oblong, square } from './rules-checks/jobs.ts';

/**
 * Cases that people who set tile have met, restated as facts: what they had, and what a plan must say of it. Answers
 * come from the trade sources or from arithmetic on what was reported; tolerances are ours.
 */
const notch = (width: number, depth: number, shape: 'square' | 'v' = 'square') =>
  nameNotch({ shape, widthMm: width * IN, depthMm: depth * IN, toothMm: shape === 'v' ? 0 : width * IN });
const quarter = notch(1 / 4, 1 / 4);
const asked = ({ shape, widthMm, depthMm, toothMm }: ReturnType<typeof notch>) => ({
  instructions: { notch: { shape, widthMm, depthMm, toothMm } },
});

describe('what the bed comes to', () => {
  test('vee notch under wet mosaic: tips touch, the bed stays under the least, never a vee', () => {
    for (const vee of [notch(3 / 16, 5 / 32, 'v'), notch(1 / 4, 3 / 16, 'v')]) {
      const standing = restingContact(vee, 45, 0.5);
      expect(standing).toBeGreaterThanOrEqual(0.05);
      expect(standing).toBeLessThanOrEqual(0.25);
      expect(bedAt(vee, 45)).toBeGreaterThanOrEqual(1.2);
      expect(bedAt(vee, 45)).toBeLessThanOrEqual(2);
      expect(bedAt(vee, 90)).toBeLessThanOrEqual(valueOf('bed.least', 'bed') + 1e-9);
    }
    const plan = areaOf({ ...square(1), thicknessMm: 6 }, { exposure: 'interior-wet' });
    expect(plan.notch.label).toBe('1/4 × 1/4 in square');
    expect(plan.flattenRidges).toBe(true);
    expect(plan.rejected.filter((one) => one.notch.shape === 'v').every((one) => one.rule === 'bed.least')).toBe(true);
  });

  test('floor notch under mini-subway sheets: the joints fill; take 1/4 × 1/4 flattened, no vee, the wall is wet', () => {
    const deep = notch(1 / 4, 3 / 8);
    const joint = IN / 8;
    const least = valueOf('bed.least', 'bed');
    const rise = (pieceLengthMm: number): number =>
      riseInJoints({ combedMm: bedAt(deep, 45), bedMm: least, pieceLengthMm, pieceWidthMm: IN, jointMm: joint });
    const squares = rise(IN);
    const oblongs = rise(2 * IN);
    expect(squares).toBeCloseTo(4.7, 0);
    expect(oblongs).toBeCloseTo(6, 0);
    for (const up of [squares, oblongs]) {
      expect(up / 6).toBeGreaterThanOrEqual(0.6);
      expect(up / 6).toBeLessThanOrEqual(1.1);
    }
    const wall = { surface: 'wall', exposure: 'interior-wet', substrate: 'cement-board', jointMm: joint };
    const tile = { ...oblong(2, 1), material: 'ceramic', thicknessMm: 6 };
    const plan = areaOf(tile, wall);
    expect(plan.notch.label).toBe('1/4 × 1/4 in square');
    expect(plan.flattenRidges).toBe(true);
    expect(plan.rejected.find((one) => one.notch.label === deep.label)?.rule).toMatch(/mosaic\.rise|bed\.need/);
    expect(plan.alternatives.some((one) => one.shape === 'v')).toBe(false);
    const area = jobOf(tile, wall).areas[0];
    if (!area) throw new Error('no area');
    const question = {
      area,
      standards: 'north-america' as const,
      need: bedNeed(area, 'north-america'),
      minCoverage: 0.95,
      mostMm: IN / 4,
    };
    expect(judgeNotch(question, deep).refusal?.rule).toBe('mosaic.rise');
  });

  test('13 in tile, 1/4 × 1/4 swirled, no back coat, laid with a light hand: 25–65 %, never the 80 of a dry floor', () => {
    // No stroke is across a swirl, so none is counted; 60 N and the tile's weight, a mix that holds a ridge.
    for (const bow of [0, 1.6]) {
      const contact = coverageOfOne({
        bedMm: bedAt(quarter, 45),
        coatMm: 0,
        crestMm: 2 * bedAt(quarter, 45),
        pitchMm: IN / 2,
        pointed: false,
        bowMm: [bow, 0],
        yieldPa: 450,
        pressurePa: 60 / 0.109 + 18 * 9.81,
        slideMm: 0,
        speed: 0,
        transfer: 1,
      });
      expect(contact).toBeGreaterThanOrEqual(0.25);
      expect(contact).toBeLessThanOrEqual(0.65);
    }
    const plan = areaOf({ ...square(13), material: 'porcelain' }, { membrane: 'backer-board', substrate: 'plywood' });
    expect(plan.rejected.find((one) => one.notch.label === quarter.label)?.rule).toBe('bed.need');
    expect(plan.butterBack).toBe(true);
    const said = plan.findings.map((one) => one.rule);
    expect(said).toEqual(expect.arrayContaining(['board.bed', 'board.fasteners', 'substrate.stiffness']));
  });

  test('a tile that only rests on equal square ridges touches over half its back', () => {
    for (const size of [1 / 4, 1 / 2]) expect(restingContact(notch(size, size), 45, 0.5)).toBeCloseTo(0.5, 9);
  });

  test('half-inch notch slid only a joint’s width: straight voids remain; travel is the notch', () => {
    const half = notch(1 / 2, 1 / 2);
    const plan = areaOf(square(24), { jointMm: IN / 8 }, asked(half));
    expect(plan.travelMm).toBeGreaterThanOrEqual(11.7);
    expect(plan.travelMm).toBeLessThanOrEqual(13.7);
    const warned = plan.findings.find((one) => one.rule === 'set.joint-limits');
    expect(warned?.severity).toBe('warn');
    // 200 N on a 24 in tile of 21 kg/m², a mix that holds a ridge, one 1/8 in stroke at 20 mm/s.
    const bed = bedAt(half, 45);
    const short = coverageOfOne({
      bedMm: bed,
      coatMm: 0,
      crestMm: 2 * bed,
      pitchMm: IN,
      pointed: false,
      bowMm: [0, 0],
      yieldPa: 450,
      pressurePa: 200 / 0.372 + 21 * 9.81,
      slideMm: IN / 8,
      speed: (9 * 20) / (bed * 450),
      transfer: 1,
    });
    expect(short).toBeGreaterThanOrEqual(0.5);
    expect(short).toBeLessThanOrEqual(0.8);
  });

  test('deep back pattern: relief takes bed, lowers the prediction, and asks for a coat or a deeper notch', () => {
    const flat = areaOf(square(12));
    const ribbed = areaOf({ ...square(12), reliefMm: 1 });
    expect(ribbed.butterBack).toBe(true);
    const litres = (plan: typeof flat): number => plan.layers.reduce((sum, layer) => sum + layer.litres, 0);
    // One litre a square metre over 10 m², and the coat itself.
    expect(litres(ribbed)).toBeGreaterThan(litres(flat) + 10);
    expect(bedNeed(jobOf({ ...square(12), reliefMm: 1 }).areas[0] as Area, 'north-america').relief).toBe(1);
    const job = jobOf(square(12));
    const area = job.areas[0];
    if (!area) throw new Error('no area');
    const setting = {
      notch: flat.notch,
      angleDeg: 45,
      flatten: false,
      method: 'slide' as const,
      travelMm: flat.travelMm,
      butterHow: 'none' as const,
      swirled: false,
      light: false,
      openMin: 20,
      minCoverage: 0.8,
    };
    const median = (reliefMm: number): number =>
      predictSpread({ ...spreadQuestion(area, job, setting), reliefMm }, { seed: 5, draws: 300 }).median;
    expect(median(1)).toBeLessThan(median(0) - 0.05);
    // One litre a square metre for each millimetre, about 30 % of a 3.4 mm bed.
    expect(1 / bedAt(flat.notch, 45)).toBeCloseTo(0.3, 2);
  });

  test('12 × 48 wall tile: comb along the 12 in side; the air’s way out is four times shorter', () => {
    const plan = areaOf(oblong(48, 12), { surface: 'wall', substrate: 'cement-board' });
    expect(plan.comb.directionDeg).toBe(90);
    expect(plan.comb.along).toBe('short-side');
    const tile = { lengthMm: 48 * IN, widthMm: 12 * IN };
    expect(airPathMm(tile, 90)).toBeCloseTo(152.4, 6);
    expect(airPathMm(tile, 0) / airPathMm(tile, 90)).toBeCloseTo(4, 9);
    const turned = areaOf(oblong(12, 48), { surface: 'wall', substrate: 'cement-board' });
    expect(turned.comb.directionDeg).toBe(0);
  });

  test('half an inch kept bare along two edges of a 12 × 12: 91.8 % at most', () => {
    const most = bareStripContact({ lengthMm: 12 * IN, widthMm: 12 * IN }, IN / 2, { along: 1, across: 1 });
    expect(most).toBeCloseTo(0.918, 3);
  });

  test('18 in tile on five dabs: 10–40 % contact, 320–335 tiles', () => {
    for (const bed of [IN / 8, IN / 4]) {
      const contact = dabContact(5, 41_000, bed, (18 * IN) ** 2);
      expect(contact).toBeGreaterThanOrEqual(0.1);
      expect(contact).toBeLessThanOrEqual(0.4);
    }
    const { tiles } = areaOf(square(18), { areaM2: 735 * FT2 });
    expect(tiles).toBeGreaterThanOrEqual(320);
    expect(tiles).toBeLessThanOrEqual(335);
  });

  test('6 × 36 plank with a 1/4 × 1/4 notch: the crown is left at about 65 %', () => {
    const centre = crownContact(bedAt(quarter, 45), 2.8, 1.3);
    expect(centre).toBeGreaterThanOrEqual(0.5);
    expect(centre).toBeLessThan(0.8);
    expect(crownContact(bedAt(notch(1 / 4, 3 / 8), 45), 2.8, 1.3)).toBeCloseTo(0.98, 1);
    const plan = areaOf(oblong(36, 6));
    expect(plan.rejected.find((one) => one.notch.label === quarter.label)?.rule).toBe('bed.need');
    expect(plan.mortarKind).toBe('large-and-heavy');
    expect(plan.butterBack).toBe(true);
  });
});

describe('joints, lippage, offset', () => {
  test('8 × 36 bowed planks at 1/4 in joints: 1/16 in and the warp, with a note on the boundary', () => {
    const plan = areaOf(oblong(36, 8), { jointMm: IN / 4 });
    expect(plan.maxLippageMm).toBeGreaterThanOrEqual(0.79);
    expect(plan.maxLippageMm).toBeLessThanOrEqual(1.6);
    expect(plan.findings.find((one) => one.rule === 'lippage.wide' && one.severity === 'note')?.says).toContain('1/32');
    const measured = areaOf({ ...oblong(36, 8), measuredBowMm: 0.7 }, { jointMm: IN / 4 });
    expect(measured.maxLippageMm).toBeCloseTo(plan.maxLippageMm + 0.7, 9);
  });

  test('half bond of a 12 × 24 is refused unless a mock-up is approved; 8 in is the most', () => {
    const half = { pattern: 'offset', offsetShare: 0.5 };
    const plan = areaOf(oblong(24, 12), half);
    const stop = plan.findings.find((one) => one.rule === 'offset.third');
    expect(stop?.severity).toBe('stop');
    expect(plan.maxOffsetShare * 24 * IN).toBeGreaterThanOrEqual(200);
    expect(plan.maxOffsetShare * 24 * IN).toBeLessThanOrEqual(206);
    expect(
      areaOf(oblong(24, 12), { ...half, mockUpApproved: true }).findings.some((f) => f.rule === 'offset.third'),
    ).toBe(false);
  });

  test('thirds cure a bow only by a ninth: 1.00, 0.89, 0.75, 0.64, 0.36', () => {
    const factors = [0.5, 1 / 3, 0.25, 0.2, 0.1].map(lippageShare);
    [1, 0.89, 0.75, 0.64, 0.36].forEach((factor, n) => {
      expect(Math.abs((factors[n] ?? 0) - factor)).toBeLessThan(0.005);
    });
    const bowed = { ...oblong(48, 6), measuredBowMm: 1.2 };
    const at = (offsetShare: number) => areaOf(bowed, { pattern: 'offset', offsetShare }).expectedLippageMm;
    expect(at(0.5)).toBeCloseTo(1.2, 9);
    expect(at(1 / 3) / at(0.5)).toBeCloseTo(8 / 9, 9);
  });
});

describe('the build-up first', () => {
  test('floor out of flat: patch first; packed with mortar it would pass the limit and sink', () => {
    const plan = areaOf(square(24), { flatnessMm: 12, flatnessOverMm: 3048 });
    const stop = plan.findings.find((one) => one.rule === 'bed.no-leveller');
    expect(stop?.severity).toBe('stop');
    expect(plan.flatnessRequired.met).toBe(false);
    expect(plan.flatnessRequired.patchMm).toBe(12);
    expect(plan.findings.some((one) => one.rule === 'bed.shrinks')).toBe(true);
    // Thin-set: 1/4 in; large-and-heavy: 1/2 in. A dip that keeps the bed within the limit brings no such word.
    expect(
      areaOf(square(24), { flatnessMm: 5, flatnessOverMm: 3048 }).findings.some((f) => f.rule === 'bed.shrinks'),
    ).toBe(false);
  });

  test('roof deck over a room: the build-up is refused; 22 ft fall 140 mm; 95 %', () => {
    const plan = areaOf(square(12), {
      exposure: 'exterior',
      substrate: 'plywood',
      membrane: 'backer-board',
      overRoom: true,
      fallRunMm: 22 * 304.8,
    });
    expect(plan.findings.find((one) => one.rule === 'exterior.gate')?.severity).toBe('stop');
    expect(leastFall(22 * 304.8)).toBeGreaterThanOrEqual(135);
    expect(leastFall(22 * 304.8)).toBeLessThanOrEqual(145);
    expect(plan.minCoverage).toBe(0.95);
  });

  test('uncoupling mat: its cavities take 1.5–4 kg of powder a square metre more', () => {
    const plan = areaOf(square(18), { membrane: 'uncoupling-mat', areaM2: 1 });
    const cavities = plan.layers.find((layer) => layer.name === 'cavities');
    const made = bagYield(jobOf(square(18)).mortar);
    const kg = ((cavities?.litres ?? 0) * 22.7) / made.usual;
    expect(kg).toBeGreaterThanOrEqual(1.5);
    expect(kg).toBeLessThanOrEqual(4);
  });

  test('backer board: its own bed and the tile’s come to 32–60 ft² a bag', () => {
    const plan = areaOf(square(6), { membrane: 'backer-board', substrate: 'plywood', areaM2: 20 }, asked(quarter));
    expect(plan.layers.map((layer) => layer.name)).toEqual(['under-board', 'bed']);
    for (const bags of [plan.bags.exact.low, plan.bags.exact.plan]) {
      expect(20 / FT2 / bags).toBeGreaterThanOrEqual(32);
      expect(20 / FT2 / bags).toBeLessThanOrEqual(60);
    }
  });
});
