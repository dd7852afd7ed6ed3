import { chanceFrom } from '../numbers/chance.ts';
import { lengthOf } from '../numbers/plain.ts';

/** Reach of one sweep of the arm, mm: about the length of a common notched blade (model). */
const REACH = 150;
/** Distance between the middles of two sweeps, in reaches (model). */
const SPACING = 0.85;

export interface InSweep {
  fromCentre: number;
  toEdge: number;
}

/**
 * Swirling: round sweeps one after another, the later wiping out the earlier where they overlap.
 * @returns for a place, the distance from the middle of the last sweep over it and to that sweep's edge, mm
 */
export function sweepsOver(lengthMm: number, widthMm: number, seed: number): (x: number, y: number) => InSweep {
  const chance = chanceFrom(seed);
  const step = REACH * SPACING;
  const centres: [x: number, y: number][] = [];
  const columns = Math.ceil(lengthMm / step) + 1;
  const rows = Math.ceil(widthMm / step) + 1;
  for (let row = 0; row < rows; row += 1)
    for (let column = 0; column < columns; column += 1)
      centres.push([
        (column - (columns - 1) / 2 + 0.3 * (chance() - 0.5)) * step,
        (row - (rows - 1) / 2 + 0.3 * (chance() - 0.5)) * step,
      ]);
  return (x, y) => {
    for (let n = centres.length - 1; n >= 0; n -= 1) {
      const [cx, cy] = centres[n]!;
      const far = lengthOf(x - cx, y - cy);
      if (far <= REACH) return { fromCentre: far, toEdge: REACH - far };
    }
    return { fromCentre: lengthOf(x, y), toEdge: REACH };
  };
}
