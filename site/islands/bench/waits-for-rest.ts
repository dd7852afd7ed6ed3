import type { BedSetup } from '@sim/bed/types.ts';

/**
 * What comes of a step of a slider waits until the hand rests where a glance at it is reckoned to take longer than this,
 * ms; the floor combed for it is shown at once. A floor that is combed as before would show nothing of the step, so what
 * comes of it is waited for longer.
 */
export const LONG_MS = { newFloor: 120, sameFloor: 350 };

/** What the comb leaves on the floor goes by this, and by the cells. */
const floorOf = ({ tile, trowel, comb }: BedSetup): string =>
  JSON.stringify([tile.lengthMm, tile.widthMm, tile.pieces, trowel, comb]);

/**
 * Whether what comes of a bed waits until the hand rests.
 * @param takesMs what a glance at it is reckoned to take
 * @param before the bed on show, or the one asked for before
 */
export function waitsForRest(takesMs: number, asked: BedSetup, before: BedSetup | null): boolean {
  const isNewFloor = !before || floorOf(before) !== floorOf(asked);
  return takesMs > (isNewFloor ? LONG_MS.newFloor : LONG_MS.sameFloor);
}
