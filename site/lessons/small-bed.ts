import { defaultSetup } from '@sim/bed/defaults.ts';
import type { BedAction, BedSetup } from '@sim/bed/types.ts';
import { inches } from '@sim/units/length.ts';

/** Eight cells to the pitch of a quarter-inch notch, the narrowest of the lessons' figures: within a point of finer ones. */
export const LESSON_CELL_MM = inches(1 / 16);

/** A lesson's small tile, 150 mm square: computed in a frame or two, so that a control answers at once. */
export function smallBed(change: Partial<BedSetup> = {}): BedSetup {
  const base = defaultSetup();
  return {
    ...base,
    tile: { ...base.tile, lengthMm: 150, widthMm: 150 },
    trowel: {
      shape: 'square',
      widthMm: inches(1 / 4),
      depthMm: inches(3 / 8),
      toothMm: inches(1 / 4),
      angleDeg: 60,
      wearMm: 0,
    },
    cellMm: LESSON_CELL_MM,
    ...change,
  };
}

/** Straight down, newtons. */
export const press = (forceN: number): BedAction => ({ do: 'press', forceN, atX: 0, atY: 0 });

/** There and back; 0° is along the tile's length, across ridges that run at 90°. */
export const slide = (directionDeg: number, strokeMm: number, forceN: number, strokes = 2): BedAction => ({
  do: 'slide',
  forceN,
  strokeMm,
  strokes,
  directionDeg,
  speedMmS: 20,
});
