/** Beds drawn at random, each worked once on straight ridges and once on a swirl: what the cost of a swirl is fitted to. */
import { defaultSetup } from '../../simulations/bed/defaults.ts';
import { runBed } from '../../simulations/bed/run.ts';
import type { BedAction, BedSetup } from '../../simulations/bed/types.ts';
import type { SwirledBed } from '../../simulations/estimate/spread/swirl.ts';
import { chanceFrom } from '../../simulations/numbers/chance.ts';
import { inches } from '../../simulations/units/length.ts';

export interface SwirlPair extends SwirledBed {
  straight: number;
  swirled: number;
}

/** Floor tile from a hand's width to 2 ft, common square notches, the hands and mixes of the trade. */
function drawn(chance: () => number): BedSetup {
  const between = (least: number, most: number): number => least + (most - least) * chance();
  const setup = defaultSetup();
  const widthMm = inches(chance() < 0.5 ? 1 / 4 : chance() < 0.5 ? 3 / 8 : 1 / 2);
  const lengthMm = between(150, 610);
  Object.assign(setup.tile, { lengthMm, widthMm: Math.max(150, lengthMm * between(0.5, 1)) });
  Object.assign(setup.trowel, {
    widthMm,
    depthMm: widthMm * between(1, 1.5),
    toothMm: widthMm,
    angleDeg: between(45, 60),
  });
  setup.comb.seed = Math.floor(between(1, 1e6));
  setup.mortar.yieldPa = between(300, 800);
  setup.cellMm = widthMm / 4;
  const forceN = between(80, 300);
  const press: BedAction = { do: 'press', forceN, atX: 0, atY: 0 };
  const slide: BedAction = {
    do: 'slide',
    forceN,
    strokeMm: between(2, 12),
    strokes: chance() < 0.5 ? 1 : 3,
    directionDeg: 0,
    speedMmS: 20,
  };
  setup.actions = chance() < 0.4 ? [press] : [press, slide];
  return setup;
}

/**
 * Draws beds and works each on both combs.
 * @param seed of the draws; the same gives the same beds anywhere
 */
export function swirlPairs(seed: number, count: number): SwirlPair[] {
  const chance = chanceFrom(seed);
  return Array.from({ length: count }, () => {
    const setup = drawn(chance);
    const covered = (pattern: 'straight' | 'swirl'): number =>
      runBed({ ...setup, comb: { ...setup.comb, pattern } }).result.coverage;
    const slid = setup.actions.find((action) => action.do === 'slide');
    return {
      lengthMm: setup.tile.lengthMm,
      widthMm: setup.tile.widthMm,
      pitchMm: setup.trowel.widthMm + setup.trowel.toothMm,
      slideMm: slid ? slid.strokeMm * slid.strokes : 0,
      straight: covered('straight'),
      swirled: covered('swirl'),
    };
  });
}
