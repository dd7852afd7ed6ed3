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
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const cell = state[row * columns + column];
      if (cell === CELL_STATE.outside || cell === CELL_STATE.joint) continue;
      if (column < found.fromColumn) found.fromColumn = column;
      if (column >= found.toColumn) found.toColumn = column + 1;
      if (row < found.fromRow) found.fromRow = row;
      if (row >= found.toRow) found.toRow = row + 1;
    }
  }
  return found.toColumn > found.fromColumn ? found : { fromColumn: 0, toColumn: columns, fromRow: 0, toRow: rows };
}

/** Width over height of the window. */
export const windowAspect = (window: TileWindow): number =>
  (window.toColumn - window.fromColumn) / (window.toRow - window.fromRow);
