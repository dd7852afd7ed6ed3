import { CELL_STATE, type BedFrame } from '../../bed/types.ts';

/** The cells the tile covers: the least and the one-past-greatest column and row. */
export interface TileWindow {
  fromColumn: number;
  toColumn: number;
  fromRow: number;
  toRow: number;
}

/** The smallest window that holds every cell under the tile; the whole frame when no tile is laid. */
export function tileWindow(frame: BedFrame): TileWindow {
  const { columns, rows, state } = frame;
  const found = { fromColumn: columns, toColumn: 0, fromRow: rows, toRow: 0 };
  const covered = (row: number, column: number): boolean => {
    const cell = state[row * columns + column];
    return cell !== CELL_STATE.outside && cell !== CELL_STATE.joint;
  };
  for (let row = 0; row < rows; row++) {
    // From both ends and no further than the window found so far: what lies inside it needs no look.
    let first = 0;
    while (first < columns && !covered(row, first)) first++;
    if (first === columns) continue;
    let last = columns - 1;
    while (last >= found.toColumn && !covered(row, last)) last--;
    found.fromColumn = Math.min(found.fromColumn, first);
    found.toColumn = Math.max(found.toColumn, last + 1);
    found.fromRow = Math.min(found.fromRow, row);
    found.toRow = row + 1;
  }
  return found.toColumn > found.fromColumn ? found : { fromColumn: 0, toColumn: columns, fromRow: 0, toRow: rows };
}

/** Width over height of the window. */
export const windowAspect = (window: TileWindow): number =>
  (window.toColumn - window.fromColumn) / (window.toRow - window.fromRow);
