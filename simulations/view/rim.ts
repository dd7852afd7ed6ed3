import type { BedFrame } from '../bed/types.ts';
import { isLaid } from './laid.ts';

/**
 * A frame whose squeeze-up is spread evenly over the width of the joint it came up in: the solver keeps it in the cell
 * by the edge where it left the tile, and paste does not stand in a needle. The volume is kept.
 */
export function levelRim(frame: BedFrame): BedFrame {
  if (!isLaid(frame)) return frame;
  const { columns, rows, gapMm } = frame;
  const covered = (column: number, row: number): boolean => !Number.isNaN(gapMm[row * columns + column]!);
  let rim = 0;
  while (rim < columns / 2 && rim < rows / 2 && !covered(rim, rows >> 1)) rim++;
  if (rim === 0 || rim >= columns / 2) return frame;
  const mortarMm = Float32Array.from(frame.mortarMm);
  const level = (from: number, step: number): void => {
    let sum = 0;
    for (let n = 0; n < rim; n++) sum += mortarMm[from + n * step]!;
    for (let n = 0; n < rim; n++) mortarMm[from + n * step] = sum / rim;
  };
  for (let row = 0; row < rows; row++) {
    level(row * columns, 1);
    level(row * columns + columns - rim, 1);
  }
  for (let column = rim; column < columns - rim; column++) {
    level(column, columns);
    level((rows - rim) * columns + column, columns);
  }
  return { ...frame, mortarMm };
}
