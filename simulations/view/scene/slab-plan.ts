import type { BedFrame } from '../../bed/types.ts';

/** The piece of floor that is shown: its edges in mm from the tile's centre, y away from the viewer. */
export interface SlabPlan {
  left: number;
  right: number;
  near: number;
  far: number;
  /** Shown depth of concrete under the floor's mean plane. */
  deep: number;
}

/** A slab with room for the tile, and behind it for the tile turned over its far edge. */
export function slabPlan(lengthMm: number, widthMm: number): SlabPlan {
  const clear = Math.min(150, Math.max(55, 0.16 * Math.max(lengthMm, widthMm)));
  return {
    left: -lengthMm / 2 - clear,
    right: lengthMm / 2 + clear,
    near: -widthMm / 2 - clear,
    far: 1.5 * widthMm + 1.3 * clear,
    deep: 0.3 * clear,
  };
}

/** Height of the floor at a place, mm; outside the frame as at its nearest cell. */
export function floorAt(frame: BedFrame, x: number, y: number): number {
  const column = Math.round((x - frame.originMm[0]) / frame.cellMm);
  const row = Math.round((y - frame.originMm[1]) / frame.cellMm);
  const c = Math.min(frame.columns - 1, Math.max(0, column));
  const r = Math.min(frame.rows - 1, Math.max(0, row));
  return frame.floorMm[r * frame.columns + c]!;
}
