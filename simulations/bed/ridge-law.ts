import { rootOfRising } from '../numbers/find-root.ts';
import { easedBy, leanShare } from './lean.ts';
import { meanBedMm, pitchMm } from '../trowel/notch.ts';
import { slideRate } from './slide-law.ts';
import type { TrowelSetup } from './types.ts';

/** Straight ridges of one comb. Lengths mm. */
export interface Ridges {
  pitchMm: number;
  /** Mortar in the ridges spread even, mm. */
  meanMm: number;
  /** Coverage before anything gives: the flat part of the ridge tops over the pitch. */
  touchShare: number;
  /** Lean over width of ridges that a slanted notch left, 0…1; upright ones if left out. */
  lean?: number;
}

/** Coat in the valleys or on the back that raises bed and fronts alike, mm. */
type Coat = number;

/**
 * Mean pressure over yield stress at which ridges stand at a coverage: 1.5 φ + φ² P/(2h), the gap h being the coat
 * plus what the ridges make at that coverage. Without a coat it is 1.5 φ + φ³ P/(2 h_m): the plastic strip under a
 * ridge (sand-heap roof) with its end term.
 * @param coverage φ, 0…1
 */
export const pressureAt = (coverage: number, ridges: Ridges, coatMm: Coat = 0): number =>
  coverage <= 0
    ? 0
    : 1.5 * coverage + (coverage * coverage * ridges.pitchMm) / (2 * (coatMm + ridges.meanMm / coverage));

/**
 * The same for a tile free to drift: ridges that lean bear less (see `lean.ts`), until they have met. While the hand
 * moves the tile their lean helps one way and hinders back, and `pressureAt` holds.
 */
export const pressedAt = (coverage: number, ridges: Ridges, coatMm: Coat = 0): number => {
  const whole = pressureAt(coverage, ridges, coatMm);
  const end = 1.5 * coverage;
  return ridges.lean ? whole - easedBy(ridges.lean, coverage, end, whole - end) : whole;
};

/** Coverage under a mean pressure (over yield stress), by pressing alone; never less than the touch. */
export function coverageUnder(pressure: number, ridges: Ridges, coatMm: Coat = 0): number {
  if (pressure >= pressedAt(1, ridges, coatMm)) return 1;
  const pressed = rootOfRising((share) => pressedAt(share, ridges, coatMm) - pressure, 0, 1, 50);
  return Math.max(ridges.touchShare, pressed);
}

/** Coverage at a gap, by volume: ridges fill what the coat leaves of it. */
export const coverageAtGap = (gapMm: number, ridges: Ridges, coatMm: Coat = 0): number =>
  gapMm <= coatMm ? 1 : Math.min(1, ridges.meanMm / (gapMm - coatMm));

/** A slide as the ridges feel it. */
export interface RidgeSlide {
  /** Path slid, all strokes together, mm. */
  pathMm: number;
  /** |cosine| of the angle between the slide and the ridges' normal: 1 across, 0 along. */
  across: number;
  /** μU/τ, mm: plastic viscosity × speed over yield stress; 0 leaves viscosity out. */
  viscousMm: number;
}

const SLIDE_STEPS = 12;

/**
 * Coverage after sliding under a mean pressure: each millimetre of path widens a ridge by the slide law's rate at the
 * ratio of the pressure to the one the ridges would stand at.
 */
export function coverageAfterSlide(
  start: number,
  pressure: number,
  slide: RidgeSlide,
  ridges: Ridges,
  coatMm: Coat = 0,
): number {
  let coverage = start;
  const step = slide.pathMm / SLIDE_STEPS;
  for (let n = 0; n < SLIDE_STEPS && coverage < 1; n += 1) {
    const load = Math.min(0.97, pressure / pressureAt(coverage, ridges, coatMm));
    const gap = coatMm + ridges.meanMm / coverage;
    coverage += (slideRate(load, slide.across, slide.viscousMm / gap) * step) / ridges.pitchMm;
  }
  return Math.min(1, coverage);
}

/** The ridge law for a trowel's straight ridges: coverage to mean pressure over yield stress. */
export const pressureForTrowel = (coverage: number, trowel: TrowelSetup): number =>
  pressedAt(coverage, {
    pitchMm: pitchMm(trowel),
    meanMm: meanBedMm(trowel),
    touchShare: 0,
    lean: leanShare(trowel),
  });
