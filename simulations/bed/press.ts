import { airStep } from './air.ts';
import { type Bed, closingStep, sinkBy } from './bed.ts';

/** Sand grains hold the tile up below this, mm: some grains of the coarsest sand (grain sizes from memory). */
export const GRAIN_STOP_MM = 0.5;

const LONGEST_STEP = 0.08;
const FIRST_STEP = 0.01;
const MOST_STEPS = 400;
/** Load and its place are met within these shares. */
const LOAD_SHARE = 0.004;
const PLACE_SHARE = 0.01;
/** With the load met, so many steps are left for tilting alone. */
const TILT_STEPS = 30;

/** A load on the tile: how much and where. */
export interface Applied {
  forceN: number;
  atX: number;
  atY: number;
}

/** Adds the tile's own weight at its middle to a push. */
export function withWeight(bed: Bed, push: Applied): Applied {
  const forceN = push.forceN + bed.weightN;
  const part = forceN > 0 ? push.forceN / forceN : 0;
  return { forceN, atX: part * push.atX, atY: part * push.atY };
}

/** Fall of the tile's plane in a step: at its centre, and its slopes. */
export interface Motion {
  sink: number;
  slopeX: number;
  slopeY: number;
}

/**
 * Shortens a motion so that no corner falls more than `most` or rises more than `rise`: mortar that has lost its tile is
 * slow to win back, so a tile is only let up where the load is far from its place.
 */
export function limited(bed: Bed, motion: Motion, most: number, rise: number): Motion {
  const { lengthMm, widthMm } = bed.setup.tile;
  const tilt = (Math.abs(motion.slopeX) * lengthMm + Math.abs(motion.slopeY) * widthMm) / 2;
  const down = motion.sink + tilt > most ? most / (motion.sink + tilt) : 1;
  const up = tilt > 0 && tilt * down - motion.sink * down > rise ? (rise + motion.sink * down) / (tilt * down) : 1;
  return { sink: motion.sink * down, slopeX: motion.slopeX * down * up, slopeY: motion.slopeY * down * up };
}

/** How far the tile may be let up at a corner in one step, mm. */
export function mostRise(bed: Bed, applied: Applied): number {
  const { lengthMm, widthMm } = bed.setup.tile;
  const off = Math.abs(bed.load.atX - applied.atX) / lengthMm + Math.abs(bed.load.atY - applied.atY) / widthMm;
  return bed.load.meanGap * Math.min(0.03, Math.max(0.0005, 0.2 * (off - PLACE_SHARE)));
}

/**
 * Slopes that bring the load's place to the wanted one, for a bed that stiffens alike everywhere it is in contact.
 * @param stiffness rise of pressure with closing, Pa/mm
 * @param wanted load after the step, N
 */
export function balancing(bed: Bed, applied: Applied, stiffness: number, wanted: number): [number, number] {
  const { load } = bed;
  const turn = (at: number, is: number, centre: number, spread: number): number => {
    const lack = wanted * (at - centre) - load.forceN * (is - centre);
    return spread > 0 ? (-0.7 * lack) / (stiffness * 1e-6 * spread) : 0;
  };
  const spreadX = load.spreadX + load.contactMm2 * 1e-3 * bed.setup.tile.lengthMm * bed.setup.tile.lengthMm;
  const spreadY = load.spreadY + load.contactMm2 * 1e-3 * bed.setup.tile.widthMm * bed.setup.tile.widthMm;
  return [turn(applied.atX, load.atX, load.centreX, spreadX), turn(applied.atY, load.atY, load.centreY, spreadY)];
}

const isBalanced = (bed: Bed, applied: Applied): boolean =>
  Math.abs(bed.load.atX - applied.atX) <= PLACE_SHARE * bed.setup.tile.lengthMm &&
  Math.abs(bed.load.atY - applied.atY) <= PLACE_SHARE * bed.setup.tile.widthMm;

export interface PressHooks {
  /** Called after each step; true stops the press where it is. */
  onStep?: (motion: Motion) => boolean;
  /** The most the tile may fall in the next step, mm. */
  mostSink?: () => number;
}

/** Presses until the bed bears the load, in steps that follow the load's own curve, tilting to keep the moments even. */
export function press(bed: Bed, applied: Applied, hooks: PressHooks = {}): void {
  let last = 0;
  let stiffness = 0;
  let tilting = 0;
  for (let n = 0; n < MOST_STEPS; n += 1) {
    const { forceN, meanGap, leastGap, contactMm2 } = bed.load;
    const enough = forceN >= applied.forceN * (1 - LOAD_SHARE);
    if (applied.forceN <= 0 || (enough && isBalanced(bed, applied)) || leastGap <= GRAIN_STOP_MM) break;
    if (stiffness <= 0) stiffness = Math.max(1, (3 * forceN) / (contactMm2 * 1e-6 * meanGap));
    const lack = Math.max(0, applied.forceN - forceN);
    const most = Math.min(
      LONGEST_STEP * meanGap,
      last === 0 ? FIRST_STEP * meanGap : 2 * last,
      leastGap / 2,
      closingStep(bed),
      hooks.mostSink?.() ?? Infinity,
      airStep(bed.grid, bed.air, lack),
    );
    const sink = Math.min(most, (0.9 * lack) / (stiffness * contactMm2 * 1e-6));
    const [slopeX, slopeY] = balancing(bed, applied, stiffness, forceN + stiffness * contactMm2 * 1e-6 * sink);
    const { centreX, centreY } = bed.load;
    const motion = limited(
      bed,
      { sink: sink + slopeX * centreX + slopeY * centreY, slopeX, slopeY },
      most,
      mostRise(bed, applied),
    );
    const fall = motion.sink - motion.slopeX * centreX - motion.slopeY * centreY;
    sinkBy(bed, motion.sink, motion.slopeX, motion.slopeY);
    const gained = bed.load.forceN - forceN;
    if (fall > 0.2 * most) {
      const found = gained / (fall * contactMm2 * 1e-6);
      stiffness = Math.min(Math.max(found, stiffness / 3), stiffness * 10);
    }
    last = Math.max(Math.abs(motion.sink), 1e-4 * meanGap);
    if (hooks.onStep?.(motion) === true) break;
    if (enough) tilting += 1;
    if (tilting > TILT_STEPS) break;
  }
}
