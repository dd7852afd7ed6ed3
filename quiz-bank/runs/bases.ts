import type { TrowelSetup } from '../../simulations/bed/types.ts';
import { inches } from '../../simulations/units/length.ts';
import { drawFrom } from '../engine/draw.ts';
import { atAngle, narrow, square, squares } from '../jobs/trowels.ts';

/** A small tile and what it is set with; each is run by every method. */
export interface BaseJob {
  lengthMm: number;
  widthMm: number;
  trowel: TrowelSetup;
  yieldPa: number;
  /** Chosen so that pressing alone leaves work to do: a fraction to a half more than the yield stress over the tile. */
  forceN: number;
  bowMm: number;
}

const sizes: readonly (readonly [number, number])[] = [
  [10, 10],
  [12, 12],
  [12, 6],
  [12, 8],
  [13, 13],
  [12, 10],
];
const blades = [...squares.slice(2), ...narrow.slice(0, 2), square(3 / 8, 3 / 8, 1 / 4)];
const BASES = 28;

/** The base jobs, the same on any machine. */
export const baseJobs: readonly BaseJob[] = Array.from({ length: BASES }, (_, at) => {
  const draw = drawFrom('base job', at);
  const [length, width] = draw.pick(sizes);
  const trowel = atAngle(draw.pick(blades), draw.pick([45, 60]));
  const yieldPa = draw.step(300, 700, 50);
  const areaM2 = (inches(length) * inches(width)) / 1e6;
  return {
    lengthMm: inches(length),
    widthMm: inches(width),
    trowel,
    yieldPa,
    forceN: Math.round(draw.step(0.5, 1.3, 0.1) * yieldPa * areaM2),
    bowMm: draw.pick([0, 0, 0.3, 0.5]),
  };
});
