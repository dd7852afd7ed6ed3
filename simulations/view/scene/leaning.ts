import type { BedFrame } from '../../bed/types.ts';
import { leaningOf, leansIn, type Leaning } from '../leaning.ts';

/** How a height field is drawn leaning, its heights mm over whatever it lies on, and which of its cells lean (1 or 0). */
export interface FieldLeaning extends Leaning {
  leans: Uint8Array;
}

/** How the mortar on the floor leans; null where it stands upright. */
export function floorLeaning(frame: BedFrame): FieldLeaning | null {
  const leaning = leaningOf(frame);
  if (!leaning) return null;
  const holds = leansIn(frame);
  return { ...leaning, leans: frame.state.map((_, cell) => (holds(cell) ? 1 : 0)) };
}

/**
 * How the mortar on a pulled tile's back leans, its heights counted from the back into the bed; null where it stands
 * upright. It is the upper part of the same ridges: rooted where they touched the back, and going against the lean the
 * farther it hangs down. Turned over, the tile shows it so by itself.
 */
export function backLeaning({ leanSlope, state }: BedFrame): FieldLeaning | null {
  return leanSlope
    ? { slope: [-leanSlope[0], -leanSlope[1]], atMm: 0, leans: new Uint8Array(state.length).fill(1) }
    : null;
}

/** Cells with mortar and those up to so many beside them: the flank of a ridge is drawn whole, down to its foot. */
export function widened(present: Uint8Array, columns: number, rings: number): Uint8Array {
  let wider = present;
  for (let ring = 0; ring < rings; ring++) {
    const inner = wider;
    wider = Uint8Array.from(inner);
    for (let cell = 0; cell < inner.length; cell++)
      if (inner[cell] === 1) for (const beside of [-columns, -1, 1, columns]) wider[cell + beside] = 1;
  }
  return wider;
}
