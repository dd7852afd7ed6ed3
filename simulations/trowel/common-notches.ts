import type { NotchShape } from '../bed/types.ts';
import { inches } from '../units/length.ts';
import { type Notch, notchLabel } from './notch.ts';

export interface CommonNotch extends Notch {
  /** Stable name for links and records, from the label. */
  id: string;
  label: string;
}

/** Width × depth × tooth in inches. What the trade sells most (common practice, no published source). */
const table: [NotchShape, width: number, depth: number, tooth: number][] = [
  ['square', 1 / 8, 1 / 8, 1 / 8],
  ['v', 1 / 4, 3 / 16, 0],
  ['v', 3 / 16, 5 / 32, 0],
  ['square', 3 / 16, 3 / 16, 3 / 16],
  ['square', 1 / 4, 1 / 4, 1 / 4],
  ['u', 1 / 4, 3 / 8, 1 / 4],
  ['square', 1 / 4, 3 / 8, 1 / 4],
  ['square', 3 / 8, 3 / 8, 3 / 8],
  ['square', 1 / 4, 1 / 2, 1 / 4],
  ['square', 1 / 2, 1 / 2, 1 / 2],
  ['u', 3 / 4, 3 / 4, 3 / 8],
  ['slanted', 1 / 2, 1 / 2, 1 / 2],
  ['slanted', 3 / 4, 3 / 4, 3 / 4],
];

const named = ([shape, width, depth, tooth]: (typeof table)[number]): CommonNotch => {
  const notch = { shape, widthMm: inches(width), depthMm: inches(depth), toothMm: inches(tooth) };
  const label = notchLabel(notch);
  return { ...notch, label, id: label.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-') };
};

/** Common notches, from the least bed to the most. */
export const commonNotches: readonly CommonNotch[] = table.map(named);
