import { CELL_STATE, type BedFrame } from '../../simulations/bed/types.ts';
import type { PullBitmap } from '../engine/picture.ts';

/** Cells across the longer side of a kept picture. */
const LONG_SIDE = 64;

const covers = (state: number | undefined): boolean =>
  state !== undefined && state !== CELL_STATE.outside && state !== CELL_STATE.joint;

/** The back of a pulled tile, made small: a kept cell is wet when more than half of what it covers bonded. */
export function bitmapOf(frame: BedFrame, lengthMm: number, widthMm: number): PullBitmap {
  const longer = Math.max(lengthMm, widthMm);
  const columns = Math.round((LONG_SIDE * lengthMm) / longer);
  const rows = Math.round((LONG_SIDE * widthMm) / longer);
  const wet = new Float64Array(columns * rows);
  const all = new Float64Array(columns * rows);
  for (let row = 0, at = 0; row < frame.rows; row++)
    for (let column = 0; column < frame.columns; column++, at++) {
      if (!covers(frame.state[at])) continue;
      const x = frame.originMm[0] + column * frame.cellMm + lengthMm / 2;
      const y = frame.originMm[1] + row * frame.cellMm + widthMm / 2;
      const across = Math.min(columns - 1, Math.max(0, Math.floor((x / lengthMm) * columns)));
      const down = Math.min(rows - 1, Math.max(0, Math.floor((y / widthMm) * rows)));
      const cell = down * columns + across;
      all[cell] = (all[cell] ?? 0) + 1;
      if (frame.state[at] === CELL_STATE.bonded) wet[cell] = (wet[cell] ?? 0) + 1;
    }
  let bits = '';
  for (let row = 0; row < rows; row++)
    for (let start = 0; start < columns; start += 4) {
      let digit = 0;
      for (let bit = 0; bit < 4; bit++) {
        const cell = row * columns + start + bit;
        if (start + bit < columns && 2 * (wet[cell] ?? 0) > (all[cell] ?? 0)) digit |= 8 >> bit;
      }
      bits += digit.toString(16);
    }
  return { columns, rows, bits };
}

/** Whether a kept cell is wet. */
export function isWet({ columns, bits }: PullBitmap, column: number, row: number): boolean {
  const digits = Math.ceil(columns / 4);
  return ((parseInt(bits[row * digits + (column >> 2)] ?? '0', 16) >> (3 - (column & 3))) & 1) === 1;
}

/** Wet share of every square of a picture ruled into `across` × `down`, row by row. */
export function wetShares(pull: PullBitmap, ruled: { across: number; down: number }): number[] {
  const squares = ruled.across * ruled.down;
  const wet = Array<number>(squares).fill(0);
  const all = Array<number>(squares).fill(0);
  for (let row = 0; row < pull.rows; row++)
    for (let column = 0; column < pull.columns; column++) {
      const square =
        Math.floor((row * ruled.down) / pull.rows) * ruled.across + Math.floor((column * ruled.across) / pull.columns);
      all[square] = (all[square] ?? 0) + 1;
      if (isWet(pull, column, row)) wet[square] = (wet[square] ?? 0) + 1;
    }
  return wet.map((count, square) => count / Math.max(1, all[square] ?? 1));
}
