/**
 * Twice as many cells to a pitch move the coverage by less than a point: pushes off the middle, slides, a bowed tile,
 * swirls. Where lanes are shut in, whether a neck of a cell's width is open decides over a pocket, so one bed may jump by
 * up to two points; what holds there is the mean over swirls, or over the directions of a crossed comb. The figures stand
 * in MODEL.md ("Convergence").
 */
import { describe, expect, it } from 'vitest';

import { defaultSetup } from '@sim/bed/defaults.ts';
import { runBed } from '@sim/bed/run.ts';
import type { BedAction, BedSetup } from '@sim/bed/types.ts';

type SlideAction = Extract<BedAction, { do: 'slide' }>;

const press = (forceN: number, atX = 0, atY = 0): BedAction => ({ do: 'press', forceN, atX, atY });
const slide = (forceN: number, directionDeg: number): SlideAction => ({
  do: 'slide',
  forceN,
  directionDeg,
  strokeMm: 3,
  strokes: 2,
  speedMmS: 20,
});

interface Case {
  notchMm: number;
  /** As the notch is wide, when left out. */
  depthMm?: number;
  angleDeg?: number;
  yieldPa?: number;
  sideMm: number;
  pattern?: 'straight' | 'swirl' | 'crossed';
  seed?: number;
  ridgesDeg?: number;
  bowMm?: number;
  actions: BedAction[];
}

function setupOf(one: Case, cellsAPitch: number): BedSetup {
  const setup = defaultSetup();
  Object.assign(setup.tile, { lengthMm: one.sideMm, widthMm: one.sideMm, bowLengthMm: one.bowMm ?? 0 });
  Object.assign(setup.trowel, { widthMm: one.notchMm, depthMm: one.depthMm ?? one.notchMm, toothMm: one.notchMm });
  if (one.angleDeg !== undefined) setup.trowel.angleDeg = one.angleDeg;
  if (one.yieldPa !== undefined) setup.mortar.yieldPa = one.yieldPa;
  Object.assign(setup.comb, {
    pattern: one.pattern ?? 'straight',
    directionDeg: one.ridgesDeg ?? 90,
    seed: one.seed ?? 1,
  });
  setup.cellMm = (2 * one.notchMm) / cellsAPitch;
  setup.actions = one.actions;
  return setup;
}

const eights = { notchMm: 8, sideMm: 152 };
const halves = { notchMm: 12.7, sideMm: 203.2 };
const cases: [string, Case][] = [
  ['straight, pressed off one edge', { ...eights, actions: [press(23, 30)] }],
  ['straight, pressed off a corner', { ...eights, actions: [press(30, 20, 25)] }],
  ['straight at 30°, pressed off a corner', { ...eights, ridgesDeg: 30, actions: [press(23, 20, 10)] }],
  ['half notch, pressed off a corner', { ...halves, actions: [press(60, 30, 10)] }],
  ['straight, moved across', { ...eights, actions: [press(10), slide(10, 0)] }],
  ['straight, moved at 40° to them', { ...eights, actions: [press(10), slide(10, 40)] }],
  ['straight under a bow, moved across', { ...eights, bowMm: 0.5, actions: [press(10), slide(10, 0)] }],
  ['swirl, pressed', { ...eights, pattern: 'swirl', actions: [press(23)] }],
  ['swirl, pressed hard', { ...eights, pattern: 'swirl', actions: [press(100)] }],
];

describe('8 → 16 cells a pitch moves coverage by less than a point', () => {
  it.each(cases)('%s', (_, one) => {
    const at = (cells: number): number => runBed(setupOf(one, cells)).result.coverage;
    expect(Math.abs(at(16) - at(8))).toBeLessThan(0.01);
  });
});

/** Beds that differ only in how the comb lies under the tile. */
const swirls = Array.from({ length: 8 }, (_, n) => ({ pattern: 'swirl', seed: n + 1 }) as const);
/** Steps of the golden section leave no direction out. */
const crossings = Array.from(
  { length: 8 },
  (_, n) => ({ pattern: 'crossed', ridgesDeg: (111.2 * (n + 1)) % 180 }) as const,
);
const shutIn: [string, Case, readonly Partial<Case>[]][] = [
  ['half notch swirls, pressed', { ...halves, actions: [press(60)] }, swirls],
  ['half notch swirls, moved', { ...halves, actions: [press(60), slide(60, 0)] }, swirls],
  ['crossed, moved under a light hand', { ...eights, actions: [press(10), slide(10, 0)] }, crossings],
  ['crossed, moved under a hard hand', { ...eights, actions: [press(40), slide(40, 0)] }, crossings],
];

describe('8 → 16 cells a pitch where air is shut in: the mean over eight combs', () => {
  it.each(shutIn)('%s', (_, one, ways) => {
    const mean = (cells: number): number =>
      ways.reduce((sum, way) => sum + runBed(setupOf({ ...one, ...way }, cells)).result.coverage, 0) / ways.length;
    expect(Math.abs(mean(16) - mean(8))).toBeLessThan(0.01);
  });
});

describe('8 → 24 cells a pitch moves coverage by less than a point where lanes close one by one under a bow', () => {
  const one = {
    notchMm: 6.35,
    depthMm: 9.525,
    angleDeg: 45,
    yieldPa: 700,
    sideMm: 203.2,
    actions: [press(60), { ...slide(60, 0), strokeMm: 6, strokes: 1 }],
  };
  it.each([-2, -1, 1, 2])('bowed by %s mm, moved across until nearly full', (bowMm) => {
    const at = (cells: number): number => runBed(setupOf({ ...one, bowMm }, cells)).result.coverage;
    expect(Math.abs(at(24) - at(8))).toBeLessThan(0.01);
  });
});
