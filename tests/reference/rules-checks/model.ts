import { expect } from 'vitest';

import { bedNeed, dipUnderTile } from '@sim/estimate/bed-need.ts';
import type { Area } from '@sim/estimate/job-types.ts';
import { swirledCoverage } from '@sim/estimate/spread/swirl.ts';
import { check, IN, printed } from './check.ts';
import { areaOf, jobOf, oblong, square } from './jobs.ts';

const floorArea = (tile: Record<string, unknown>): Area => jobOf(tile).areas[0] as Area;

/** Figures of our own, worked through by hand from what the model says it does. */
export const modelChecks = [
  check('Bed needed under a rectified 12 × 24', 'hand: 0.55 + ½·0.05 in + 1.5·1/16 in', () => {
    const need = bedNeed(floorArea({ ...oblong(24, 12), edge: 'rectified' }), 'north-america');
    expect(need.sand).toBeCloseTo(0.55, 12);
    expect(need.warp).toBeCloseTo(0.025 * IN, 9);
    expect(need.floor).toBeCloseTo((1.5 / 16) * IN, 9);
    expect(need.total).toBeCloseTo(3.5666, 3);
  }),
  check('Dip under 12, 24, 72 and 240 in of floor', 'hand: ANSI A108.02 4.2.2 by straight lines', () => {
    expect(dipUnderTile(12 * IN)).toBeCloseTo(IN / 32, 9);
    expect(dipUnderTile(24 * IN)).toBeCloseTo(IN / 16, 9);
    expect(dipUnderTile(72 * IN)).toBeCloseTo((3 / 32) * IN, 9);
    expect(dipUnderTile(240 * IN)).toBeCloseTo(IN / 8, 9);
  }),
  printed('The model’s own page', 'bed.need', { angle: 45, grain: 0.55, warpShare: 0.5, floorTimes: 1.5 }),
  printed('Trade articles on mosaics; the count is ours', 'mosaic.flatten', { ridges: 3 }),
  printed('Common practice: half the tile’s thickness', 'mosaic.rise', { share: 0.5 }),
  printed('Common practice', 'mosaic.piece', { edge: 60, usual: IN, thickness: 6 }),
  printed('The model’s own page', 'bags.spread', { low: 45, high: 60 }),
  printed('Common practice', 'time.weather', { step: 10, warmer: 0.65, breeze: 0.75, wind: 0.5, sun: 0.5 }),
  printed('Common practice', 'time.damp', { dry: 0.75, damp: 1.2 }),
  printed('From memory', 'mortar.stiffness', { slumps: 200, holds: 450, stiff: 900 }),
  printed('From memory; a block of 100 × 250 mm', 'model.pressing', {
    light: 40,
    least: 100,
    most: 400,
    wall: 0.6,
    block: 25000,
  }),
  printed('The model’s own page', 'model.strokes', { least: 0.3, most: 2.5, slow: 10, fast: 40, shaken: 30 }),
  printed('From memory', 'model.mix', { factor: 1.6, least: 4, most: 14 }),
  printed('The model’s own page', 'bed.too-much', { times: 1.75 }),
  printed('The model’s own page', 'butter.unsure', { share: 0.8 }),
  printed('The model’s own page', 'model.draws', { draws: 400, tail: 0.1 }),
  printed('An assumption of ours, reckoned with small notches', 'membrane.bond', { least: 1.05, most: 1.8 }),
  printed('Mat of 1/8 in, 50–80 % hollow', 'mat.volume', { depth: IN / 8, least: 0.5, most: 0.8 }),
  printed('An assumption of ours', 'mat.heated-volume', { depth: 5 }),
  printed('Geometry of a smooth bow', 'lippage.bow', { half: 1, third: 8 / 9 }),
  printed('Ours', 'substrate.keyed-tile', { depth: 3 }),
  check(
    'A swirl under 5 3/4, 13 3/4 and 21 3/4 in, pressed and moved',
    'hand: loss in proportion to the size and the square, halved by the first 0.93 of a pitch moved',
    () => {
      const swirled = (inches: number, slideMm: number, straight = 1) =>
        swirledCoverage(straight, { lengthMm: inches * IN, widthMm: inches * IN, pitchMm: 12.7, slideMm });
      expect(swirled(5.75, 0)).toBe(1);
      expect(swirled(21.75, 0)).toBeCloseTo(0.53, 3);
      expect(swirled(13.75, 0)).toBeCloseTo(0.765, 3);
      expect(swirled(21.75, 0, 0.5)).toBeCloseTo(0.5 * (1 - 0.47 / 4), 3);
      expect(swirled(21.75, 0.99 * 12.7)).toBeCloseTo(1 - 0.47 / 2, 3);
      expect(swirled(21.75, 3 * 0.99 * 12.7)).toBeCloseTo(1 - 0.47 / 4, 3);
      expect(swirled(40, 0)).toBeCloseTo(0.53, 3);
      expect(swirledCoverage(1, { lengthMm: 24 * IN, widthMm: 12 * IN, pitchMm: 12.7, slideMm: 0 })).toBeCloseTo(
        swirled(16, 0),
        9,
      );
    },
  ),
  printed('`npm run fit`, beds held out', 'model.swirl', { spread: 0.06 }),
  check('At least 200 draws stand behind a prediction', 'the plan’s own promise', () => {
    expect(areaOf(square(12)).predicted.draws).toBeGreaterThanOrEqual(200);
  }),
];
