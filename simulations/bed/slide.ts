import { direction } from '../numbers/plain.ts';
import { airStep, LEAST_PART, timelyPart } from './air.ts';
import { type Bed, closingStep, sinkBy } from './bed.ts';
import { frontGain, type RateByAngle, type SlideField, volumeAt } from './front-gain.ts';
import { borneN, smear } from './lean.ts';
import { type Applied, balancing, GRAIN_STOP_MM, motionOf, press } from './press.ts';
import { slideRate } from './slide-law.ts';
import { keep, takeBack } from './undo.ts';

const ANGLES = 12;
/** A front moves at most this many cells in a step, and the tile falls at most this share of the gap. */
const FRONT_STEP = 0.75;
const SINK_STEP = 0.08;
/** It fills at most this part of the voids' room, unless the tile falls by less than this share of the gap. */
const CLOSING_SHARE = 0.2;
const LEAST_CLOSING = 0.01;
/** What is left of a path is gone in one step when the tile would fall by less than this share of the gap. */
const STILL = 0.002;
const MOST_STEPS = 2000;
/** A step that ends on air is taken back and shortened, down to a fall of this share of the gap. */
const FINEST_STEP = 5e-4;
const OVER_SHARE = 0.02;
/** Nearer to the plastic load than this the tile is pressed, not slid down. */
const MOST_LOAD = 0.97;

/** U* = μU/(hτ): viscous against yield stress in the gap. */
export const speedNumber = (bed: Bed, speedMmS: number): number =>
  bed.setup.physics.viscosity && bed.load.meanGap > 0
    ? (bed.setup.mortar.viscosityPaS * speedMmS) / (bed.load.meanGap * bed.terms.yieldPa)
    : 0;

const ratesFor = (load: number, speed: number): RateByAngle =>
  Float64Array.from({ length: ANGLES + 1 }, (_, n) => slideRate(load, n / ANGLES, speed));

/** An orbit meets every front at every angle: one rate for all, the mean over the circle. */
function roundRates(rates: RateByAngle): RateByAngle {
  let sum = 0;
  const turns = 24;
  for (let k = 0; k < turns; k += 1) {
    const cosine = direction(((k + 0.5) * 90) / turns)[0];
    const place = cosine * ANGLES;
    const low = Math.min(ANGLES - 1, Math.floor(place));
    sum += rates[low]! + (place - low) * (rates[low + 1]! - rates[low]!);
  }
  return new Float64Array(ANGLES + 1).fill(sum / turns);
}

/** How much of a step should have been made, 1 when all: air must not bear more than the load, nor lanes close unseen. */
const timely = (bed: Bed, { forceN }: Applied, sink: number): number =>
  bed.load.airN > forceN * (1 + OVER_SHARE) ? LEAST_PART : timelyPart(bed.grid, bed.air, sink, forceN);

export interface Slide {
  applied: Applied;
  field: SlideField;
  /** Path to go, mm. */
  pathMm: number;
  speedMmS: number;
  /** Directions go round, as under a vibrating plate. */
  round?: boolean;
}

/**
 * Slides the tile along a path under a load. Sliding takes the yield threshold away: the fronts widen by the slide law
 * and the tile sinks by the mortar they take up, as far as the air under it lets it.
 * @param onStep called after each step with the path gone; true stops
 */
export function slide(bed: Bed, how: Slide, onStep: (goneMm: number) => boolean = () => false): void {
  const { applied, field } = how;
  let gone = 0;
  let shorter = 1;
  /** Rise of the plastic load with the fall of the tile, N/mm, as the last step found it. */
  let rise = 0;
  bed.sliding = true;
  for (let n = 0; n < MOST_STEPS && gone < how.pathMm - 1e-9; n += 1) {
    if (applied.forceN > borneN(bed) * 1.01) press(bed, applied);
    const { load } = bed;
    if (load.leastGap <= GRAIN_STOP_MM || load.contactMm2 === 0) break;
    const lift = applied.forceN - load.airN;
    const bears = load.forceN - load.airN;
    const ratio = bears > 0 ? Math.min(MOST_LOAD, lift / bears) : 0;
    if (lift <= 0 || (ratio <= 0 && applied.forceN > 0)) {
      gone = how.pathMm;
      break;
    }
    const speed = speedNumber(bed, how.speedMmS);
    const ratesAt = (share: number): RateByAngle => {
      const plain = ratesFor(share, speed);
      return how.round ? roundRates(plain) : plain;
    };
    const gain = frontGain(bed.grid, field, ratesAt(ratio));
    if (gain.volume <= 0) {
      gone = how.pathMm;
      break;
    }
    const fall = gain.volume / load.contactMm2;
    const most = Math.min(
      SINK_STEP * load.meanGap,
      load.leastGap / 2,
      closingStep(bed, CLOSING_SHARE, LEAST_CLOSING),
      airStep(bed.grid, bed.air, lift),
    );
    const left = how.pathMm - gone;
    const furthest = FRONT_STEP / gain.fastest;
    const whole = fall * left < STILL * load.meanGap ? left : Math.min(left, furthest, most / fall);
    const step = whole * shorter;
    // A front widens evenly with the path, so one over the gap grows evenly too: exact for ridges over any step.
    const sunk = (volume: number): number => {
      const evenly = (volume / load.contactMm2) * step;
      return evenly / (1 + evenly / load.meanGap);
    };
    // The bed bears more as the tile comes down: the rate is that of the middle of the step.
    if (rise === 0) rise = (4 * bears) / load.meanGap;
    const middle = Math.min(MOST_LOAD, lift / (bears + 0.5 * rise * sunk(gain.volume)));
    const sink = sunk(volumeAt(gain, ratesAt(middle)));
    const stiffness = (3 * load.forceN) / (load.contactMm2 * 1e-6 * load.meanGap);
    const slopes = balancing(bed, applied, stiffness, load.forceN, load.forceN);
    const motion = motionOf(bed, sink, slopes, 2 * sink, 0);
    const before = bed.setup.physics.air && sink > FINEST_STEP * load.meanGap ? keep(bed) : null;
    sinkBy(bed, motion.sink, motion.slopeX, motion.slopeY);
    const part = before ? timely(bed, applied, motion.sink) : 1;
    if (before && part < 1) {
      takeBack(bed, before);
      shorter *= part;
      continue;
    }
    smear(bed, load.contactMm2);
    shorter = Math.min(1, 2 * shorter);
    if (sink > 1e-4 * load.meanGap) rise = Math.max(0, (bed.load.forceN - bed.load.airN - bears) / sink);
    gone += step;
    bed.slidMm += step;
    if (onStep(gone)) break;
  }
  bed.sliding = false;
}
