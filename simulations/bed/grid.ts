import type { BedLayout } from './layout.ts';

/** What a cell is at the moment. Order matters: below FULL there is air or the open joint. */
export const OPEN = 0;
export const EMPTY = 1;
export const FULL = 2;
/** Full, and beside air or the open joint. */
export const AT_FRONT = 3;
/** Added to a full cell's state: waiting in the march's list; waiting in the route for a higher neighbour; passed by it. */
export const QUEUED = 4;
export const WAITS = 8;
export const PASSED = 16;

/** Bits of `mark`. */
export const TOUCHED = 1;
export const FRESH = 2;
export const LISTED = 4;
/** While what is left over looks for room: met on the way, and known to lead to some. */
export const MET = 8;
export const LEADS = 16;

/**
 * All state of a bed, a value a cell, row by row (x fastest). Allocated once, changed in place: 36 bytes a cell.
 */
export interface BedGrid extends BedLayout {
  /** Mortar column, mm: combed, plus the coat on the back, less what the back's relief takes. 8 bytes. */
  mortar: Float64Array;
  /** Tile's underside over the floor, mm. 8 bytes. */
  gap: Float64Array;
  /** Gauge pressure in a full cell, Pa; in an empty one −1 less the share of it that a front has taken; else 0. 8 bytes. */
  pressure: Float64Array;
  /** Level a front runs over in the cell, mm: coats and slopes, not walls. 4 bytes. */
  foot: Float32Array;
  /** Room for lists of cells: those that wait in the march, those that are too full in the route. 4 bytes. */
  list: Int32Array;
  /** Which void an empty cell belongs to; 0 none, 1 open to the tile's edge, from 2 on a pocket. 2 bytes. */
  label: Uint16Array;
  /** OPEN … AT_FRONT, with QUEUED, WAITS or PASSED. 1 byte. */
  state: Uint8Array;
  /** TOUCHED: has met mortar. FRESH: met it by sliding. LISTED: on the list of front cells too full. MET, LEADS: in between. 1 byte. */
  mark: Uint8Array;
}

export function makeGrid(layout: BedLayout): BedGrid {
  const cells = layout.columns * layout.rows;
  return {
    ...layout,
    mortar: new Float64Array(cells),
    gap: new Float64Array(cells),
    pressure: new Float64Array(cells),
    foot: new Float32Array(cells),
    list: new Int32Array(cells),
    label: new Uint16Array(cells),
    state: new Uint8Array(cells),
    mark: new Uint8Array(cells),
  };
}
