import { airStep } from './air.ts';
import { type Bed, closingStep, sinkBy } from './bed.ts';
import { borneN, driftBy } from './lean.ts';
import { keep, takeBack } from './undo.ts';

/** Sand grains hold the tile up below this, mm: some grains of the coarsest sand (grain sizes from memory). */
export const GRAIN_STOP_MM = 0.5;

const LONGEST_STEP = 0.08;
const FIRST_STEP = 0.01;
const MOST_STEPS = 400;
/** The load is met within this share, its place within this share of the side. */
const LOAD_SHARE = 0.002;
const PLACE_SHARE = 0.01;
/** Nearer than this share of the side a tile is not turned: on a few tops rounding would tip it one way or the other. */
const LEVEL_SHARE = 0.001;
/** A step that bears more than this over the load is taken back and halved, down to this share of the gap. */
const OVER_SHARE = 0.05;
const FINEST_STEP = 1e-3;
const LEAST_LOOK = 0.15;
/** A step fills at most this part of the voids' room, unless it is shorter than this share of the gap. */
const CLOSING_SHARE = 0.6;
const LEAST_CLOSING = 0.004;
/** Air may take up this share of the load in a step that only evens the moments. */
const SPARE_SHARE = 0.05;
/** A load this far off its place (shares of both sides together) is beyond the middle of the tile: the far side rises. */
const FAR_OFF = 0.06;

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
 * A fall with a tilt such that no corner falls more than `most` nor rises more than `rise`: the tilt turns about the
 * corner that bears most, since mortar that has lost its tile is slow to win back.
 * @param sink wanted fall of the middle of the contact, mm
 */
export function motionOf(bed: Bed, sink: number, slopes: [number, number], most: number, rise: number): Motion {
  const { lengthMm, widthMm } = bed.setup.tile;
  const tilt = (Math.abs(slopes[0]) * lengthMm + Math.abs(slopes[1]) * widthMm) / 2;
  const part = tilt > most / 2 ? most / 2 / tilt : 1;
  const slopeX = slopes[0] * part;
  const slopeY = slopes[1] * part;
  const middle = sink + slopeX * bed.load.centreX + slopeY * bed.load.centreY;
  return { sink: Math.min(most - tilt * part, Math.max(middle, tilt * part - rise)), slopeX, slopeY };
}

/** Fall of the lowest corner in a motion, mm. */
const deepest = (bed: Bed, motion: Motion): number =>
  motion.sink +
  (Math.abs(motion.slopeX) * bed.setup.tile.lengthMm + Math.abs(motion.slopeY) * bed.setup.tile.widthMm) / 2;

/** How far the tile may be let up at a corner in one step, mm: only away from a push far off its middle. */
export function mostRise(bed: Bed, applied: Applied, slopes: [number, number]): number {
  if (slopes[0] * applied.atX + slopes[1] * applied.atY >= 0) return 0;
  const { lengthMm, widthMm } = bed.setup.tile;
  const off = Math.abs(bed.load.atX - applied.atX) / lengthMm + Math.abs(bed.load.atY - applied.atY) / widthMm;
  return bed.load.meanGap * Math.min(0.02, Math.max(0, 0.1 * (off - FAR_OFF)));
}

/**
 * Slopes that bring the load's place to the wanted one, for a bed that stiffens alike everywhere it is in contact.
 * @param stiffness rise of pressure with closing, Pa/mm
 * @param wanted load after the step, N
 * @param bears load now, N
 */
export function balancing(
  bed: Bed,
  applied: Applied,
  stiffness: number,
  wanted: number,
  bears: number,
): [number, number] {
  const { load } = bed;
  const turn = (at: number, is: number, centre: number, spread: number, side: number): number => {
    const lack = wanted * (at - centre) - bears * (is - centre);
    const slack = LEVEL_SHARE * side * wanted;
    const turns = lack > slack ? lack - slack : lack < -slack ? lack + slack : 0;
    return spread > 0 ? (-0.7 * turns) / (stiffness * 1e-6 * spread) : 0;
  };
  const { lengthMm, widthMm } = bed.setup.tile;
  const spreadX = load.spreadX + load.contactMm2 * 1e-3 * lengthMm * lengthMm;
  const spreadY = load.spreadY + load.contactMm2 * 1e-3 * widthMm * widthMm;
  return [
    turn(applied.atX, load.atX, load.centreX, spreadX, lengthMm),
    turn(applied.atY, load.atY, load.centreY, spreadY, widthMm),
  ];
}

/**
 * True when the bed can bear the load at its place: pressures may be anything up to those at yield, so what it could
 * bear beyond the load can be taken off the side that has too much (a quarter of the tile's side off its middle).
 */
function isBalanced(bed: Bed, applied: Applied): boolean {
  const { atX, atY } = bed.load;
  const forceN = borneN(bed);
  const spare = PLACE_SHARE + (0.25 * Math.max(0, forceN - applied.forceN)) / forceN;
  return (
    Math.abs(atX - applied.atX) <= spare * bed.setup.tile.lengthMm &&
    Math.abs(atY - applied.atY) <= spare * bed.setup.tile.widthMm
  );
}

/**
 * Where to look next between a place that bears too little and one that bore too much, as a share of the way: by a chord
 * of the load's curve, which bends upward as a bed fills, so that the chord is met before the load is.
 */
function shareToLoad(wantedN: number, underN: number, overN: number): number {
  const share = ((1 + OVER_SHARE) * wantedN - underN) / (overN - underN);
  return share >= LEAST_LOOK ? Math.min(0.5, share) : LEAST_LOOK;
}

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
  /** The tile may fall this much and no more before it bears well over the load, mm; and what it bore there, N. */
  let bracket = Infinity;
  let overN = Infinity;
  let isEvening = false;
  for (let n = 0; n < MOST_STEPS; n += 1) {
    const { meanGap, leastGap, contactMm2 } = bed.load;
    const forceN = borneN(bed);
    const enough = forceN >= applied.forceN * (1 - LOAD_SHARE);
    if (applied.forceN <= 0 || (enough && isBalanced(bed, applied)) || leastGap <= GRAIN_STOP_MM) break;
    // To bring the moments even the tile may go beyond the place where it bore too much.
    if (enough && !isEvening) bracket = Infinity;
    isEvening = enough;
    if (stiffness <= 0) stiffness = Math.max(1, (3 * forceN) / (contactMm2 * 1e-6 * meanGap));
    const lack = Math.max(0, applied.forceN - forceN);
    const most = Math.min(
      LONGEST_STEP * meanGap,
      last === 0 || enough ? FIRST_STEP * meanGap : 2 * last,
      leastGap / 2,
      closingStep(bed, CLOSING_SHARE, LEAST_CLOSING),
      bracket * shareToLoad(applied.forceN, forceN, overN),
      hooks.mostSink?.() ?? Infinity,
      airStep(bed.grid, bed.air, Math.max(lack, SPARE_SHARE * applied.forceN)),
    );
    const sink = Math.min(most, (0.9 * lack) / (stiffness * contactMm2 * 1e-6));
    const tilting = Math.min(stiffness, (3 * forceN) / (contactMm2 * 1e-6 * meanGap));
    const slopes = balancing(bed, applied, tilting, forceN + stiffness * contactMm2 * 1e-6 * sink, forceN);
    const motion = motionOf(bed, sink, slopes, most, mostRise(bed, applied, slopes));
    const { centreX, centreY } = bed.load;
    const fall = motion.sink - motion.slopeX * centreX - motion.slopeY * centreY;
    const before = bracket <= FINEST_STEP * meanGap ? null : keep(bed);
    sinkBy(bed, motion.sink, motion.slopeX, motion.slopeY);
    const down = deepest(bed, motion);
    if (before && borneN(bed) > Math.max(applied.forceN, forceN) * (1 + OVER_SHARE)) {
      overN = borneN(bed);
      takeBack(bed, before);
      bracket = down;
      continue;
    }
    bracket = before ? bracket - down : Infinity;
    driftBy(bed, fall);
    const gained = borneN(bed) - forceN;
    if (fall > 0.2 * most) {
      const found = gained / (fall * contactMm2 * 1e-6);
      stiffness = Math.min(Math.max(found, stiffness / 3), stiffness * 10);
    }
    last = Math.max(down, 1e-4 * meanGap);
    if (hooks.onStep?.(motion) === true) break;
  }
}
