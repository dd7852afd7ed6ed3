import type { BedFrame } from '../bed/types.ts';
import { isLaid } from './laid.ts';

/**
 * How a bed's upright columns are drawn leaning: slid aside with their height over the floor's mean plane. What stands
 * at `atMm` stays at its place, lower parts stand back against the lean, higher ones forward.
 */
export interface Leaning {
  /** Run over rise along x and y. */
  slope: [x: number, y: number];
  /** mm over the floor's mean plane. */
  atMm: number;
}

/** The tallest column of a combed bed, mm over the floor. */
function crestMm({ mortarMm }: BedFrame): number {
  let most = 0;
  for (const height of mortarMm) if (height > most) most = height;
  return most;
}

/**
 * How the ridges of a frame lean; null where none do. A column's place is where it touches the tile's back: there the
 * solver counts contact and air, and there they are painted, told and left on a pulled tile. So the feet stand aside;
 * of a comb without a tile the crests are at their place, for these the tile will meet.
 */
export function leaningOf(frame: BedFrame): Leaning | null {
  if (!frame.leanSlope) return null;
  return { slope: frame.leanSlope, atMm: isLaid(frame) ? frame.tileHeightMm : crestMm(frame) };
}

/** Which cells lean: all of a comb, and what lies under a tile; what was squeezed out beside it or into a joint stands upright. */
export function leansIn(frame: BedFrame): (cell: number) => boolean {
  if (!frame.leanSlope) return () => false;
  return isLaid(frame) ? (cell) => !Number.isNaN(frame.gapMm[cell]!) : () => true;
}
