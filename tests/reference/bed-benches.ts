/** Set-ups for exact solutions: plain floors and tiles, and only the physics that the solution has. */
import { startBed, type Bed } from '@sim/bed/bed.ts';
import { defaultSetup } from '@sim/bed/defaults.ts';
import type { BedSetup, NotchShape } from '@sim/bed/types.ts';

const bare = { endTerm: true, weight: false, air: false, viscosity: false };

export interface FlatBench {
  lengthMm: number;
  widthMm: number;
  depthMm: number;
  yieldPa: number;
  cellMm: number;
  endTerm: boolean;
}

/** An even layer that fills the gap from the start. */
export function flatBed(bench: FlatBench): Bed {
  const setup = defaultSetup();
  Object.assign(setup.tile, { lengthMm: bench.lengthMm, widthMm: bench.widthMm });
  setup.comb.pattern = 'flat';
  setup.trowel.depthMm = bench.depthMm;
  setup.mortar.yieldPa = bench.yieldPa;
  setup.cellMm = bench.cellMm;
  setup.physics = { ...bare, endTerm: bench.endTerm };
  return startBed(setup);
}

export interface RidgeBench {
  shape?: NotchShape;
  widthMm: number;
  depthMm: number;
  toothMm: number;
  bladeDeg?: number;
  ridgesDeg: number;
  cellsAPitch: number;
  yieldPa?: number;
  /** Side of the tile, mm; by default eleven pitches, so that its edges lie in valleys. */
  sideMm?: number;
}

/** Straight ridges under a square tile of an odd number of pitches. */
export function ridgeSetup(bench: RidgeBench): BedSetup {
  const setup = defaultSetup();
  const pitch = bench.widthMm + bench.toothMm;
  const side = bench.sideMm ?? 11 * pitch;
  Object.assign(setup.tile, { lengthMm: side, widthMm: side });
  setup.trowel = {
    shape: bench.shape ?? 'square',
    widthMm: bench.widthMm,
    depthMm: bench.depthMm,
    toothMm: bench.toothMm,
    angleDeg: bench.bladeDeg ?? 60,
    wearMm: 0,
  };
  setup.comb.directionDeg = bench.ridgesDeg;
  setup.cellMm = pitch / bench.cellsAPitch;
  setup.mortar.yieldPa = bench.yieldPa ?? 500;
  setup.physics = { ...bare };
  return setup;
}
