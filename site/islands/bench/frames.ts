import type { BedFrame } from '@sim/bed/types.ts';
import { levelRim } from '@sim/view/rim.ts';

/** Pictures kept of one run; more are thinned out evenly, since a whole history of a large tile would fill a phone. */
export const MOST_FRAMES = 36;

/** Adds a picture; past the limit every second one in the middle goes, the first and the last stay. */
export function keepFrame(frames: readonly BedFrame[], next: BedFrame): BedFrame[] {
  const all = [...frames, next];
  if (all.length <= MOST_FRAMES) return all;
  return all.filter((_, n) => n === 0 || n === all.length - 1 || n % 2 === 1);
}

/** The floor is the same in every picture of a run: one array serves them all. */
export function shareFloor(first: BedFrame | undefined, given: BedFrame): BedFrame {
  const frame = levelRim(given);
  return first && first.floorMm.length === frame.floorMm.length ? { ...frame, floorMm: first.floorMm } : frame;
}
