import { type BedGrid, DONE, EMPTY, FULL, WAITING } from './grid.ts';

/** What the march needs besides the grid. */
export interface MarchTerms {
  yieldPa: number;
  /** Added at every front: 1.5 τ, or nothing. */
  endPa: number;
  /** Gauge pressure of each void by its label, Pa. */
  gaugePa: Float64Array;
}

/** Part of a front cell that the front has crossed: the mortar over the level it runs on. */
function crossed(grid: BedGrid, n: number): number {
  const foot = grid.foot[n]!;
  const room = grid.gap[n]! - foot;
  const part = room > 0 ? (grid.mortar[n]! - foot) / room : 1;
  return part < 0 ? 0 : part > 1 ? 1 : part;
}

/**
 * Pressure of the bed at yield: |∇p| = 2τ/g in full cells, given at the fronts (an eikonal problem). Cells are taken
 * in groups of rising pressure, so the whole costs a few looks a cell, and `order` is afterwards a way downhill for
 * the mortar. A front lies half a cell and the crossed part of the next cell away: without that the load is several
 * per cent off.
 */
export function march(grid: BedGrid, terms: MarchTerms): void {
  const { gap, pressure, state, order, label, from, share, columns, rim, tileColumns, tileRows, cellMm } = grid;
  const { endPa, gaugePa } = terms;
  const climb = 2 * terms.yieldPa * cellMm;
  let waiting = 0;
  let widest = 0;
  let least = Infinity;

  /** Distance in cells from a full cell to the front in its neighbour; two fronts in one cell share it. */
  const reach = (next: number, beyond: number): number => {
    if (state[next] !== EMPTY) return 0.5;
    const part = -1 - pressure[next]!;
    return state[beyond]! >= FULL ? 0.5 + 0.5 * part : 0.5 + part;
  };

  const solve = (n: number): number => {
    const rise = climb / gap[n]!;
    let best = Infinity;
    let a = 0;
    let da = 1;
    let side = 0;
    let s = state[n - 1]!;
    if (s === DONE) {
      a = pressure[n - 1]!;
      best = a + rise;
      side = 1;
    } else if (s <= EMPTY) {
      a = endPa + gaugePa[label[n - 1]!]!;
      da = reach(n - 1, n - 2);
      best = a + da * rise;
      side = 1;
    }
    s = state[n + 1]!;
    if (s === DONE) {
      if (pressure[n + 1]! + rise < best) {
        a = pressure[n + 1]!;
        da = 1;
        best = a + rise;
        side = 2;
      }
    } else if (s <= EMPTY) {
      const base = endPa + gaugePa[label[n + 1]!]!;
      const d = reach(n + 1, n + 2);
      if (base + d * rise < best) {
        a = base;
        da = d;
        best = a + d * rise;
        side = 2;
      }
    }
    let bestY = Infinity;
    let b = 0;
    let db = 1;
    let sideY = 0;
    s = state[n - columns]!;
    if (s === DONE) {
      b = pressure[n - columns]!;
      bestY = b + rise;
      sideY = 4;
    } else if (s <= EMPTY) {
      b = endPa + gaugePa[label[n - columns]!]!;
      db = reach(n - columns, n - 2 * columns);
      bestY = b + db * rise;
      sideY = 4;
    }
    s = state[n + columns]!;
    if (s === DONE) {
      if (pressure[n + columns]! + rise < bestY) {
        b = pressure[n + columns]!;
        db = 1;
        bestY = b + rise;
        sideY = 8;
      }
    } else if (s <= EMPTY) {
      const base = endPa + gaugePa[label[n + columns]!]!;
      const d = reach(n + columns, n + 2 * columns);
      if (base + d * rise < bestY) {
        b = base;
        db = d;
        bestY = b + d * rise;
        sideY = 8;
      }
    }
    if (side === 0 || bestY <= a) {
      from[n] = sideY;
      share[n] = 0;
      return bestY;
    }
    if (sideY === 0 || best <= b) {
      from[n] = side;
      share[n] = 255;
      return best;
    }
    const wa = 1 / (da * da);
    const wb = 1 / (db * db);
    const p = (wa * a + wb * b + Math.sqrt((wa + wb) * rise * rise - wa * wb * (a - b) * (a - b))) / (wa + wb);
    const gx = (p - a) / da;
    const gy = (p - b) / db;
    from[n] = side | sideY;
    share[n] = Math.round((255 * gx) / (gx + gy));
    return p;
  };

  for (let row = rim; row < rim + tileRows; row += 1) {
    const start = row * columns + rim;
    for (let n = start; n < start + tileColumns; n += 1) {
      if (state[n] !== EMPTY) continue;
      if (state[n - 1]! >= FULL || state[n + 1]! >= FULL || state[n - columns]! >= FULL || state[n + columns]! >= FULL)
        pressure[n] = -1 - crossed(grid, n);
    }
  }
  for (let row = rim; row < rim + tileRows; row += 1) {
    const start = row * columns + rim;
    for (let n = start; n < start + tileColumns; n += 1) {
      if (state[n] !== FULL) continue;
      if (gap[n]! > widest) widest = gap[n]!;
      if (state[n - 1]! > EMPTY && state[n + 1]! > EMPTY && state[n - columns]! > EMPTY && state[n + columns]! > EMPTY)
        continue;
      const p = solve(n);
      pressure[n] = p;
      state[n] = WAITING;
      if (p < least) least = p;
      order[waiting] = n;
      waiting += 1;
    }
  }

  const group = widest > 0 ? (0.5 * climb) / widest : 0;
  // order[0 … taken) is done, order[taken … waiting) waits; a cell that is taken changes places with the first waiting.
  let taken = 0;
  while (taken < waiting) {
    const limit = least + group;
    least = Infinity;
    for (let k = taken; k < waiting; k += 1) {
      const n = order[k]!;
      const p = pressure[n]!;
      if (p > limit) {
        if (p < least) least = p;
        continue;
      }
      state[n] = DONE;
      order[k] = order[taken]!;
      order[taken] = n;
      taken += 1;
      for (let side = 0; side < 4; side += 1) {
        const next = side === 0 ? n - 1 : side === 1 ? n + 1 : side === 2 ? n - columns : n + columns;
        const s = state[next]!;
        if (s !== FULL && s !== WAITING) continue;
        const before = pressure[next]!;
        if (before <= p) continue;
        const wasFrom = from[next]!;
        const wasShare = share[next]!;
        const value = solve(next);
        if (value >= before) {
          from[next] = wasFrom;
          share[next] = wasShare;
          continue;
        }
        pressure[next] = value;
        if (s === FULL) {
          state[next] = WAITING;
          order[waiting] = next;
          waiting += 1;
        } else if (value < least) least = value;
      }
    }
  }
  grid.taken = taken;
}
