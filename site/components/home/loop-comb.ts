import type { Comb } from '@site/components/drawings/section.ts';
import { inches } from '@sim/units/length.ts';

/** What the drawing on the first page shows: a half-inch square notch with its tooth, at 60°, under a 9 mm tile. */
const notchMm = inches(1 / 2);
export const angleDeg = 60;
const comb: Comb = {
  ridgeMm: notchMm,
  heightMm: notchMm * Math.sin((angleDeg * Math.PI) / 180),
  pitchMm: 2 * notchMm,
};
export const loopComb = { comb, notchMm, angleDeg, tileMm: 9 };
