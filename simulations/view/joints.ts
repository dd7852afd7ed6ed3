import type { BedFrame } from '../bed/types.ts';
import { evenOut, spreadOut } from './bead.ts';
import type { TileWindow } from './map/tile-window.ts';

/** A part of a joint stands this many times as high as the mean of its joint at most. */
const HIGHEST = 1.4;

/** First and one-past-last of a run of lines. */
type Run = [from: number, to: number];

/** Runs of lines that hold (or do not hold) a property. */
function runs(from: number, to: number, holds: (line: number) => boolean): Run[] {
  const found: Run[] = [];
  for (let line = from; line < to; line++) {
    if (!holds(line)) continue;
    const first = line;
    while (line + 1 < to && holds(line + 1)) line++;
    found.push([first, line + 1]);
  }
  return found;
}

/** Levels one stretch of a joint: what stands in it is spread along it and lies even across it. */
function levelStretch(mortarMm: Float32Array, cellMm: number, along: Run, across: Run, cell: Cell): void {
  const strip = new Float64Array(along[1] - along[0]);
  for (let n = along[0]; n < along[1]; n++)
    for (let k = across[0]; k < across[1]; k++) strip[n - along[0]]! += mortarMm[cell(n, k)]!;
  spreadOut(strip, cellMm);
  evenOut(strip, (HIGHEST * strip.reduce((sum, height) => sum + height, 0)) / strip.length);
  for (let n = along[0]; n < along[1]; n++)
    for (let k = across[0]; k < across[1]; k++) mortarMm[cell(n, k)] = strip[n - along[0]]! / (across[1] - across[0]);
}
type Cell = (along: number, across: number) => number;

/**
 * Mortar in the joints of a sheet of pieces, levelled in place: the solver keeps it in the cell where it came up, and
 * paste does not stand in needles. Its volume is the solver's in each stretch of joint; how it lies is drawn.
 */
export function levelJoints({ columns, cellMm, gapMm, mortarMm }: BedFrame, window: TileWindow): void {
  const { fromColumn, toColumn, fromRow, toRow } = window;
  const bare = (cell: number): boolean => Number.isNaN(gapMm[cell]!);
  const bareColumn = (column: number): boolean => {
    for (let row = fromRow; row < toRow; row++) if (!bare(row * columns + column)) return false;
    return true;
  };
  const bareRow = (row: number): boolean => {
    for (let column = fromColumn; column < toColumn; column++) if (!bare(row * columns + column)) return false;
    return true;
  };
  const upright = runs(fromColumn, toColumn, bareColumn);
  const level = runs(fromRow, toRow, bareRow);
  const pieces = runs(fromColumn, toColumn, (column) => !upright.some(([from, to]) => column >= from && column < to));
  for (const joint of upright)
    levelStretch(mortarMm, cellMm, [fromRow, toRow], joint, (row, column) => row * columns + column);
  for (const joint of level)
    for (const piece of pieces) levelStretch(mortarMm, cellMm, piece, joint, (column, row) => row * columns + column);
}
