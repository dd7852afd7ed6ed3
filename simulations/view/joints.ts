import type { BedFrame } from '../bed/types.ts';
import { evenOut, spreadOut } from './bead.ts';
import type { TileWindow } from './map/tile-window.ts';

/** A part of a joint stands this many times as high as the mean of its joint at most. */
const HIGHEST = 1.2;

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

type Cell = (along: number, across: number) => number;

/** Levels one joint over the lines it runs through: what stands in it is spread along it and lies even across it. */
function levelJoint(mortarMm: Float32Array, cellMm: number, lines: readonly number[], across: Run, cell: Cell): void {
  const strip = new Float64Array(lines.length);
  lines.forEach((line, n) => {
    for (let k = across[0]; k < across[1]; k++) strip[n]! += mortarMm[cell(line, k)]!;
  });
  spreadOut(strip, cellMm);
  evenOut(strip, (HIGHEST * strip.reduce((sum, height) => sum + height, 0)) / strip.length);
  lines.forEach((line, n) => {
    for (let k = across[0]; k < across[1]; k++) mortarMm[cell(line, k)] = strip[n]! / (across[1] - across[0]);
  });
}

/**
 * Mortar in the joints of a sheet of pieces, levelled in place: the solver keeps it in the cell where it came up, and
 * paste does not stand in needles. Its volume is the solver's in each joint; how it lies is drawn.
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
  // Where two joints cross, what stands there is the upright one's.
  const rows = Array.from({ length: toRow - fromRow }, (_, n) => fromRow + n);
  const between = Array.from({ length: toColumn - fromColumn }, (_, n) => fromColumn + n).filter(
    (column) => !upright.some(([from, to]) => column >= from && column < to),
  );
  for (const joint of upright) levelJoint(mortarMm, cellMm, rows, joint, (row, column) => row * columns + column);
  for (const joint of level) levelJoint(mortarMm, cellMm, between, joint, (column, row) => row * columns + column);
}
