import type { BedSetup } from './types.ts';

/** How the cells lie over the tile and a rim for the joint. */
export interface BedLayout {
  columns: number;
  rows: number;
  /** Side of a square cell, mm. */
  cellMm: number;
  /** Cells from the grid's edge to the tile's. */
  rim: number;
  tileColumns: number;
  tileRows: number;
  /** Centre of cell (0,0), mm from the tile's centre. */
  originMm: [number, number];
}

/**
 * First cell under the tile and the one past the last, row by row: a single loop over them meets the rim's cells between
 * the rows too, which are all open. (One loop, not one in another: compiled code that is entered in the middle of an
 * inner loop is left again at its end.)
 */
export const spanOf = ({ columns, rim, tileColumns, tileRows }: BedLayout): [first: number, past: number] => [
  rim * columns + rim,
  (rim + tileRows - 1) * columns + rim + tileColumns,
];

/** Width of the strip round the tile in which squeeze-up is shown, mm. */
const RIM_MM = 5;

/** Largest cell over the asked one that is tried when fitting whole cells to the tile. */
const FIT = 1.03;

/**
 * Square cells that fit the tile in whole numbers, near the size asked for: exactly along the length, and along the
 * width to the least misfit found within three per cent.
 */
export function layOut(tile: BedSetup['tile'], askedMm: number): BedLayout {
  const most = Math.max(1, Math.round(tile.lengthMm / askedMm));
  let columns = most;
  let least = Infinity;
  for (let n = most; n >= Math.max(1, Math.floor(most / FIT)); n -= 1) {
    const across = tile.widthMm / (tile.lengthMm / n);
    const misfit = Math.abs(across - Math.round(across)) / across + 1e-6 * (most - n);
    if (misfit < least - 1e-12) {
      least = misfit;
      columns = n;
    }
  }
  const cell = tile.lengthMm / columns;
  const rows = Math.max(1, Math.round(tile.widthMm / cell));
  const rim = Math.max(2, Math.round(RIM_MM / cell));
  return {
    columns: columns + 2 * rim,
    rows: rows + 2 * rim,
    cellMm: cell,
    rim,
    tileColumns: columns,
    tileRows: rows,
    originMm: [-(columns / 2 + rim - 0.5) * cell, -(rows / 2 + rim - 0.5) * cell],
  };
}
