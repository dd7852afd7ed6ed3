import { chanceFrom } from '../numbers/chance.ts';
import { lengthOf } from '../numbers/plain.ts';

/** Reach of one sweep of the arm, mm: about the length of a common notched blade (model). */
const REACH = 150;
/** Distance between the middles of two sweeps, in reaches (model). */
const SPACING = 0.85;

/** Where a place lies in the last sweep over it, mm. */
export interface InSweep {
  fromCentre: number;
  toEdge: number;
}

/**
 * Swirling: round sweeps one after another, the later wiping out the earlier where they overlap.
 * @returns for a place, writes into `into` the distance from the middle of the last sweep over it and to that sweep's edge
 */
export function sweepsOver(
  lengthMm: number,
  widthMm: number,
  seed: number,
): (x: number, y: number, into: InSweep) => void {
  const chance = chanceFrom(seed);
  const step = REACH * SPACING;
  const columns = Math.ceil(lengthMm / step) + 1;
  const rows = Math.ceil(widthMm / step) + 1;
  const count = columns * rows;
  const centreX = new Float64Array(count);
  const centreY = new Float64Array(count);
  for (let row = 0, n = 0; row < rows; row += 1)
    for (let column = 0; column < columns; column += 1, n += 1) {
      centreX[n] = (column - (columns - 1) / 2 + 0.3 * (chance() - 0.5)) * step;
      centreY[n] = (row - (rows - 1) / 2 + 0.3 * (chance() - 0.5)) * step;
    }
  return (x, y, into) => {
    for (let n = count - 1; n >= 0; n -= 1) {
      const offX = x - centreX[n]!;
      const offY = y - centreY[n]!;
      // Most sweeps are far off, which either side alone tells.
      if (Math.abs(offX) > REACH || Math.abs(offY) > REACH) continue;
      const far = lengthOf(offX, offY);
      if (far > REACH) continue;
      into.fromCentre = far;
      into.toEdge = REACH - far;
      return;
    }
    into.fromCentre = lengthOf(x, y);
    into.toEdge = REACH;
  };
}
