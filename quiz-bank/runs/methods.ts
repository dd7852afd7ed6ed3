import { defaultSetup } from '../../simulations/bed/defaults.ts';
import type { BedAction, BedSetup, CombPattern } from '../../simulations/bed/types.ts';
import { pitchMm } from '../../simulations/trowel/notch.ts';
import type { BaseJob } from './bases.ts';

/** Ways to comb and set; the first four differ in the hands, the others in the comb. */
export const METHODS = ['press', 'along', 'across', 'worked', 'swirl', 'crossed'] as const;
export type Method = (typeof METHODS)[number];

const patterns: Record<Method, CombPattern> = {
  press: 'straight',
  along: 'straight',
  across: 'straight',
  worked: 'straight',
  swirl: 'swirl',
  crossed: 'crossed',
};

/** One short push, along or across; or strokes there and back, as a patient pair of hands does. */
const STROKES: Record<Method, number> = { press: 0, along: 1, across: 1, worked: 4, swirl: 4, crossed: 4 };
const SPEED = 20;

/** The set-up of one run. Ridges run along the tile's width (its short side); 0° is along its length, across them. */
export function setupOf(job: BaseJob, method: Method): BedSetup {
  const base = defaultSetup();
  const { trowel, forceN } = job;
  const press: BedAction = { do: 'press', forceN, atX: 0, atY: 0 };
  const slide: BedAction = {
    do: 'slide',
    forceN,
    strokeMm: STROKES[method] === 1 ? trowel.widthMm / 3 : Math.min(6, trowel.widthMm / 2),
    strokes: STROKES[method],
    directionDeg: method === 'along' ? 90 : 0,
    speedMmS: SPEED,
  };
  return {
    ...base,
    tile: { ...base.tile, lengthMm: job.lengthMm, widthMm: job.widthMm, bowLengthMm: job.bowMm },
    trowel,
    comb: { ...base.comb, pattern: patterns[method], directionDeg: 90, seed: 1 },
    mortar: { ...base.mortar, yieldPa: job.yieldPa, ageMin: 0 },
    actions: method === 'press' ? [press] : [press, slide],
    // Eight cells to a pitch: coarse enough for a shelf of runs, fine enough for the model.
    cellMm: pitchMm(trowel) / 8,
  };
}
