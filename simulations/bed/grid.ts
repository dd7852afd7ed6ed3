import type { BedLayout } from './layout.ts';

/** What a cell is at the moment. Order matters: below FULL there is air or the open joint. */
export const OPEN = 0;
export const EMPTY = 1;
export const FULL = 2;
export const WAITING = 3;
export const DONE = 4;

/** Bits of `mark`. */
export const TOUCHED = 1;
export const FRESH = 2;

/**
 * All state of a bed, a value a cell, row by row (x fastest). Allocated once, changed in place: 38 bytes a cell.
 */
export interface BedGrid extends BedLayout {
  /** Mortar column, mm: combed, plus the coat on the back, less what the back's relief takes. 8 bytes. */
  mortar: Float64Array;
  /** Tile's underside over the floor, mm. 8 bytes. */
  gap: Float64Array;
  /** Gauge pressure in a full cell, Pa; in an empty one −1 less the share of it that a front has taken. 8 bytes. */
  pressure: Float64Array;
  /** Level a front runs over in the cell, mm: coats and slopes, not walls. 4 bytes. */
  foot: Float32Array;
  /** From the front: cells in the order the march took them. From the back: cells it still considers. 4 bytes. */
  order: Int32Array;
  /** Which void an empty cell belongs to; 0 none, 1 open to the tile's edge, from 2 on a pocket. 2 bytes. */
  label: Uint16Array;
  /** OPEN … DONE. 1 byte. */
  state: Uint8Array;
  /** Sides the pressure came from: 1 left, 2 right, plus 4 lower, 8 upper. 1 byte. */
  from: Uint8Array;
  /** Part that leaves through the x side, of 255. 1 byte. */
  share: Uint8Array;
  /** TOUCHED: has met mortar. FRESH: met it by sliding. 1 byte. */
  mark: Uint8Array;
  /** Cells the march took. */
  taken: number;
}

export function makeGrid(layout: BedLayout): BedGrid {
  const cells = layout.columns * layout.rows;
  return {
    ...layout,
    mortar: new Float64Array(cells),
    gap: new Float64Array(cells),
    pressure: new Float64Array(cells).fill(-1),
    foot: new Float32Array(cells),
    order: new Int32Array(cells),
    label: new Uint16Array(cells),
    state: new Uint8Array(cells),
    from: new Uint8Array(cells),
    share: new Uint8Array(cells),
    mark: new Uint8Array(cells),
    taken: 0,
  };
}
