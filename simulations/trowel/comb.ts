import type { CombSetup, TrowelSetup } from '../bed/types.ts';
import { direction, lengthOf, sineOf } from '../numbers/plain.ts';
import { chanceFrom } from '../numbers/chance.ts';
import { meanBedMm, pitchMm } from './notch.ts';
import { meanHeight, type RidgeProfile, ridgeProfile } from './profile.ts';
import { sweepsOver } from './sweeps.ts';

/** What the comb left at a place: the mean height over a small window, and the level the ridge stands on there. */
export interface CombedSpot {
  heightMm: number;
  /** Where a wall of a ridge passes through the window this is the foot of the wall, else the height itself. */
  footMm: number;
}

export type CombField = (x: number, y: number) => CombedSpot;

/** Distance across the ridges at a place; ridges repeat every pitch. */
type Across = (x: number, y: number) => number;

/** Share of a pitch by which a hand that wobbles leaves the line, and the length of one wobble, mm (model). */
const WOBBLE_SHARE = 0.4;
const WOBBLE_LENGTH = 120;
/** The wrist that fans a trowel stands this far from the tile's middle, in tile lengths (model). */
const FAN_REACH = 0.9;

function straight(degrees: number, startMm = 0): Across {
  const [c, s] = direction(degrees);
  return (x, y) => y * c - x * s + startMm;
}

function wobbling(degrees: number, pitch: number, seed: number): Across {
  const [c, s] = direction(degrees);
  const turn = 360 * chanceFrom(seed)();
  return (x, y) => y * c - x * s + WOBBLE_SHARE * pitch * sineOf(turn + (360 * (x * c + y * s)) / WOBBLE_LENGTH);
}

function fanned(degrees: number, reach: number): Across {
  const [c, s] = direction(degrees);
  return (x, y) => lengthOf(x + reach * s, y - reach * c);
}

function spotOf(profile: RidgeProfile, u: number, window: number): CombedSpot {
  const height = meanHeight(profile, u, window);
  const left = meanHeight(profile, u - window / 2, window / 64);
  const right = meanHeight(profile, u + window / 2, window / 64);
  const wall = Math.abs(right - left) > 0.5 * profile.heightMm;
  return { heightMm: height, footMm: wall ? Math.min(left, right, height) : height };
}

const higher = (a: CombedSpot, b: CombedSpot): CombedSpot => (a.heightMm >= b.heightMm ? a : b);

/**
 * The field a comb leaves before coats and bare edges.
 * @param window side of the cell it is averaged over, mm
 * @param lengthMm,widthMm the tile it is combed for (a swirl's sweeps cover it)
 */
export function combField(
  comb: CombSetup,
  trowel: TrowelSetup,
  window: number,
  lengthMm: number,
  widthMm: number,
): CombField {
  const profile = ridgeProfile(trowel);
  const along = (across: Across): CombField => {
    return (x, y) => spotOf(profile, across(x, y), window);
  };
  switch (comb.pattern) {
    case 'flat': {
      const even = { heightMm: trowel.depthMm, footMm: trowel.depthMm };
      return () => even;
    }
    case 'straight':
      return along(straight(comb.directionDeg));
    case 'wobble':
      return along(wobbling(comb.directionDeg, pitchMm(trowel), comb.seed));
    case 'fan':
      return along(fanned(comb.directionDeg, FAN_REACH * Math.max(lengthMm, widthMm)));
    case 'crossed': {
      const first = along(straight(comb.directionDeg));
      const second = along(straight(comb.directionDeg + 90));
      return (x, y) => higher(first(x, y), second(x, y));
    }
    case 'swirl': {
      const sweeps = sweepsOver(lengthMm, widthMm, comb.seed);
      return (x, y) => {
        const { fromCentre, toEdge } = sweeps(x, y);
        // The heel of the blade leaves a bead along the edge of each sweep.
        const ring = spotOf(profile, fromCentre, window);
        return toEdge < pitchMm(trowel) ? higher(ring, spotOf(profile, toEdge - trowel.widthMm / 2, window)) : ring;
      };
    }
  }
}

/** Mean bed a comb can leave, mm: the notch's, whatever the pattern; an even layer is as thick as it is told. */
export const combedMeanMm = (comb: CombSetup, trowel: TrowelSetup): number =>
  comb.pattern === 'flat' ? trowel.depthMm : meanBedMm(trowel);
