/** Beds that are computed with finer and finer cells: for the tests, and for the table of MODEL.md ("Convergence"). */
import { defaultSetup } from '../../simulations/bed/defaults.ts';
import { runBed } from '../../simulations/bed/run.ts';
import type { BedAction, BedSetup, CombSetup } from '../../simulations/bed/types.ts';

type SlideAction = Extract<BedAction, { do: 'slide' }>;

export const press = (forceN: number, atX = 0, atY = 0): BedAction => ({ do: 'press', forceN, atX, atY });
export const slide = (forceN: number, directionDeg: number): SlideAction => ({
  do: 'slide',
  forceN,
  directionDeg,
  strokeMm: 3,
  strokes: 2,
  speedMmS: 20,
});

export interface RefinedBed {
  notchMm: number;
  /** As the notch is wide, when left out. */
  depthMm?: number;
  angleDeg?: number;
  yieldPa?: number;
  sideMm: number;
  /** As the side is long, when left out. */
  widthMm?: number;
  pattern?: CombSetup['pattern'];
  seed?: number;
  ridgesDeg?: number;
  bowMm?: number;
  actions: BedAction[];
}

function setupOf(one: RefinedBed, cellsAPitch: number): BedSetup {
  const setup = defaultSetup();
  Object.assign(setup.tile, { lengthMm: one.sideMm, widthMm: one.widthMm ?? one.sideMm, bowLengthMm: one.bowMm ?? 0 });
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

/** Coverage, 0…1, with so many cells to a pitch. */
export const coverageAt = (one: RefinedBed, cellsAPitch: number): number =>
  runBed(setupOf(one, cellsAPitch)).result.coverage;

export const eights = { notchMm: 8, sideMm: 152 };
export const quarters = { notchMm: 6.35, sideMm: 152 };
export const halves = { notchMm: 12.7, sideMm: 203.2 };
/** A deep quarter-inch notch, moved until lanes close one by one under a bow. */
export const deepQuarters = {
  notchMm: 6.35,
  depthMm: 9.525,
  angleDeg: 45,
  yieldPa: 700,
  sideMm: 203.2,
  actions: [press(60), { ...slide(60, 0), strokeMm: 6, strokes: 1 }],
};

/** Beds that differ only in how the comb lies under the tile. */
export const swirls = (count: number): Partial<RefinedBed>[] =>
  Array.from({ length: count }, (_, n) => ({ pattern: 'swirl', seed: n + 1 }));
/** Steps of the golden section leave no direction out. */
export const crossings = (count: number): Partial<RefinedBed>[] =>
  Array.from({ length: count }, (_, n) => ({ pattern: 'crossed', ridgesDeg: (111.2 * (n + 1)) % 180 }));

/** Beds that each, by itself, keep to a point from 8 to 16 cells. */
export const steadyBeds: [bed: string, RefinedBed][] = [
  ['straight, pressed', { ...eights, actions: [press(23)] }],
  ['straight, pressed 30 mm off', { ...eights, actions: [press(23, 30)] }],
  ['straight, pressed off a corner', { ...eights, actions: [press(30, 20, 25)] }],
  ['straight at 30°, pressed off a corner', { ...eights, ridgesDeg: 30, actions: [press(23, 20, 10)] }],
  ['half-inch straight, pressed off a corner', { ...halves, actions: [press(60, 30, 10)] }],
  ['straight, moved across', { ...eights, actions: [press(10), slide(10, 0)] }],
  ['straight, moved at 40°', { ...eights, actions: [press(10), slide(10, 40)] }],
  ['straight, bowed 0.5 mm, moved across', { ...eights, bowMm: 0.5, actions: [press(10), slide(10, 0)] }],
  ['swirl, pressed', { ...eights, pattern: 'swirl', actions: [press(23)] }],
  ['swirl, pressed hard', { ...eights, pattern: 'swirl', actions: [press(100)] }],
];
