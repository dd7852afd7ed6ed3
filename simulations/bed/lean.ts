import { direction } from '../numbers/plain.ts';
import { pitchMm, ridgeHeightMm, yawNarrows } from '../trowel/notch.ts';
import { ridgeLeanMm } from '../trowel/profile.ts';
import { strokeLong } from '../trowel/stroke.ts';
import type { BedLoad } from './load.ts';
import type { MarchTerms } from './march.ts';
import type { BedSetup, TrowelSetup } from './types.ts';

/**
 * Ridges that lean, under a tile free to drift. The load goes straight down, so it goes through the part of a ridge that
 * stands both on its foot and under its top; a ridge whose top lies s beside its foot bears as one narrower by
 * LOST × s. With all of s lost the rest stands by itself (a safe bound), with none the ridge is squeezed as if upright
 * (a bound from above); three quarters is what a limit analysis of single ridges gives, within five hundredths of the
 * load for ridges one to three gaps wide that lean by 0.3 to 0.45 of their width (tests/reference/lean.test.ts).
 */
const LOST = 0.75;
/** No analysis was made of ridges that lean by more than this share of their width. */
const MOST_LEAN = 0.6;
/** Flanks of squeezed ridges bulge and prop each other from this coverage on; a full bed leans nowhere (model). */
const PROPPED_FROM = 0.75;

/** A common lean of the ridges under a tile. */
export interface Lean {
  /** Top beside foot over the ridge's width: 0 upright. Pressing keeps it, since both grow; a slide widens the ridge alone. */
  share: number;
  /** The share as combed. */
  freshShare: number;
  /** Unit vector from the feet to the tops. */
  towards: [x: number, y: number];
  pitchMm: number;
  /** How far the tile has drifted that way, mm. */
  driftMm: number;
}

/** What of a bed its lean has to do with. */
interface LeaningBed {
  lean: Lean | null;
  load: BedLoad;
  terms: MarchTerms;
}

/** Which way the ridges of a comb lean in common, and how much of their lean is common, 0…1. */
function commonWay({ comb }: BedSetup): [x: number, y: number, part: number] {
  const [c, s] = direction(comb.directionDeg);
  switch (comb.pattern) {
    case 'straight':
    case 'wobble':
      return [-s, c, 1];
    case 'drawn': {
      const path = comb.path ?? [];
      const [first, last] = [path[0], path.at(-1)];
      if (!first || !last) return [0, 0, 0];
      const [x, y] = [last[0] - first[0], last[1] - first[1]];
      const straight = strokeLong([first, last]);
      // Strokes there and back lean against each other; what is left is as the crow flies over the way gone.
      return straight > 0 ? [-y / straight, x / straight, straight / strokeLong(path)] : [0, 0, 0];
    }
    case 'crossed':
    case 'fan':
    case 'swirl':
    case 'flat':
      return [0, 0, 0];
  }
}

/** How far the ridge a trowel leaves lies over, top beside foot over its width: 0 for all notches but slanted ones. */
export const leanShare = (trowel: TrowelSetup): number =>
  trowel.shape === 'slanted' ? Math.min(MOST_LEAN, ridgeLeanMm(trowel) / (trowel.widthMm * yawNarrows(trowel))) : 0;

/** The lean a slanted notch leaves; null where ridges stand upright, lean each its own way or are knocked down. */
export function leanOf(setup: BedSetup): Lean | null {
  const { trowel, comb } = setup;
  const [x, y, part] = comb.flattened ? [0, 0, 0] : commonWay(setup);
  const share = part * leanShare(trowel);
  return share > 0 ? { share, freshShare: share, towards: [x, y], pitchMm: pitchMm(trowel), driftMm: 0 } : null;
}

/** How far the ridges still stand apart at a coverage: 1 up to three quarters, 0 when full. */
const apart = (coverage: number): number => Math.min(1, Math.max(0, (1 - coverage) / (1 - PROPPED_FROM)));

/**
 * What ridges bear less for leaning, in the unit of the two parts of the load.
 * @param share lean over width
 * @param coverage 0…1
 * @param end the end term's part of the load, which goes with the width
 * @param roof the part that goes with its square: a ridge's own sand-heap roof, not a merged bed's
 */
export function easedBy(share: number, coverage: number, end: number, roof: number): number {
  const left = 1 - LOST * share;
  return apart(coverage) * ((1 - left) * end + (1 - left * left) * roof);
}

/** What a bed as it lies bears under a push straight down on a tile free to drift, N: its load, less for leaning ridges. */
export function borneN(bed: LeaningBed): number {
  const { lean, load, terms } = bed;
  if (!lean || load.contactMm2 === 0) return load.forceN;
  const contactM2 = load.contactMm2 * 1e-6;
  const coverage = load.contactMm2 / load.tileMm2;
  const end = terms.endPa * contactM2;
  const ridge = (terms.yieldPa * contactM2 * coverage * lean.pitchMm) / (2 * load.meanGap);
  const roof = Math.min(ridge, Math.max(0, load.forceN - load.airN - end));
  return load.forceN - easedBy(lean.share, coverage, end, roof);
}

/** The tile goes aside about as far as it is pressed down, as in the limit analysis, less as the lean is lost. */
export function driftBy(bed: LeaningBed, fallMm: number): void {
  const { lean, load } = bed;
  if (lean && fallMm > 0)
    lean.driftMm += (fallMm * apart(load.contactMm2 / load.tileMm2) * lean.share) / lean.freshShare;
}

/** A slide smears ridges wider, there and back, and leaves their tops where they were: they lean by less of their width. */
export function smear(bed: LeaningBed, contactBeforeMm2: number): void {
  if (bed.lean && bed.load.contactMm2 > contactBeforeMm2) bed.lean.share *= contactBeforeMm2 / bed.load.contactMm2;
}

/** How far the tile went aside over leaning ridges, mm along x and y; nothing to say where none lean. */
export const drifted = ({ lean }: Pick<LeaningBed, 'lean'>): { driftMm?: [x: number, y: number] } =>
  lean ? { driftMm: [lean.driftMm * lean.towards[0], lean.driftMm * lean.towards[1]] } : {};

/** How ridges lean along x and y, run over rise. */
export type Slope = [x: number, y: number];

const slopeOf = ({ towards, share }: Lean, ridgeMm: number, heightMm: number): Slope => [
  (towards[0] * share * ridgeMm) / heightMm,
  (towards[1] * share * ridgeMm) / heightMm,
];

/** The slope of fresh ridges; null where none lean. */
export function freshSlope(setup: BedSetup): Slope | null {
  const lean = leanOf(setup);
  const { trowel } = setup;
  return lean && slopeOf(lean, trowel.widthMm * yawNarrows(trowel), ridgeHeightMm(trowel));
}

/** The slope of the ridges under a tile; null where none lean. */
export const bedSlope = ({ lean, load }: LeaningBed): Slope | null =>
  lean && load.contactMm2 > 0 ? slopeOf(lean, (load.contactMm2 / load.tileMm2) * lean.pitchMm, load.meanGap) : null;
