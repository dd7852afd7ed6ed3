import type { CombSetup, TrowelSetup } from '../bed/types.ts';
import { direction, lengthOf, sineOf } from '../numbers/plain.ts';
import { chanceFrom } from '../numbers/chance.ts';
import { meanBedMm, pitchMm, yawNarrows } from './notch.ts';
import { type CombedSpot, ridgeProfile, spotAt } from './profile.ts';
import { acrossStroke } from './stroke.ts';
import { type InSweep, sweepsOver } from './sweeps.ts';

/** Writes what the comb left at a place into `into`. */
export type CombField = (x: number, y: number, into: CombedSpot) => void;

/** Distance across the ridges at a place; ridges repeat every pitch. */
type Across = (x: number, y: number) => number;

/** Share of a pitch by which a hand that wobbles leaves the line, and the length of one wobble, mm (model). */
const WOBBLE_SHARE = 0.4;
const WOBBLE_LENGTH = 120;
/** The wrist that fans a trowel stands this far from the tile's middle, in tile lengths (model). */
const FAN_REACH = 0.9;

function straight(degrees: number): Across {
  const [c, s] = direction(degrees);
  return (x, y) => y * c - x * s;
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

/** Of two passes over one place the higher is left, in `into`. */
function keepHigher(into: CombedSpot, other: CombedSpot): void {
  if (other.heightMm <= into.heightMm) return;
  into.heightMm = other.heightMm;
  into.footMm = other.footMm;
}

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
  const other: CombedSpot = { heightMm: 0, footMm: 0 };
  const along =
    (across: Across): CombField =>
    (x, y, into) => {
      spotAt(profile, across(x, y), window, into);
    };
  switch (comb.pattern) {
    case 'flat':
      return (_x, _y, into) => {
        into.heightMm = trowel.depthMm;
        into.footMm = trowel.depthMm;
      };
    case 'straight':
      return along(straight(comb.directionDeg));
    case 'wobble':
      return along(wobbling(comb.directionDeg, pitchMm(trowel), comb.seed));
    case 'fan':
      return along(fanned(comb.directionDeg, FAN_REACH * Math.max(lengthMm, widthMm)));
    case 'drawn':
      return along(acrossStroke(comb.path ?? []));
    case 'crossed': {
      const first = along(straight(comb.directionDeg));
      const second = along(straight(comb.directionDeg + 90));
      return (x, y, into) => {
        first(x, y, into);
        second(x, y, other);
        keepHigher(into, other);
      };
    }
    case 'swirl': {
      const sweeps = sweepsOver(lengthMm, widthMm, comb.seed);
      // The heel of the blade leaves a bead along the edge of each sweep.
      const bead = (trowel.widthMm * yawNarrows(trowel)) / 2;
      const halfPitch = pitchMm(trowel) / 2;
      const swept: InSweep = { fromCentre: 0, toEdge: 0 };
      return (x, y, into) => {
        sweeps(x, y, swept);
        spotAt(profile, swept.fromCentre, window, into);
        spotAt(profile, Math.min(swept.toEdge - bead, halfPitch), window, other);
        keepHigher(into, other);
      };
    }
  }
}

/** Mean bed a comb can leave, mm: the notch's, whatever the pattern; an even layer is as thick as it is told. */
export const combedMeanMm = (comb: CombSetup, trowel: TrowelSetup): number =>
  comb.pattern === 'flat' ? trowel.depthMm : meanBedMm(trowel);
