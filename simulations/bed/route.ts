import { type BedGrid, EMPTY, FULL, OPEN } from './grid.ts';

/** A cell between two fronts counts as full only when its neighbours in the valley have no more room than this share. */
const LEVEL = 1e-6;

/**
 * Levels the last cells of a valley: one that is handed too much, with full cells on both sides of it, passes the rest
 * on along the valley, so that the two fronts meet everywhere at once and not at a chance cell.
 */
function level(grid: BedGrid, n: number): void {
  const { mortar, gap, state, columns } = grid;
  const keep = gap[n]! * (1 - LEVEL);
  for (let row = -columns; row <= columns; row += columns)
    for (let next = n + row - 1; next <= n + row + 1; next += 1) {
      if (next === n || state[next] !== EMPTY) continue;
      const room = gap[next]! * (1 - LEVEL) - mortar[next]!;
      if (room <= 0) continue;
      const pass = Math.min(room, mortar[n]! - keep);
      mortar[next] = mortar[next]! + pass;
      mortar[n] = mortar[n]! - pass;
      if (mortar[n]! <= keep) return;
    }
}

/** A front cell has been handed more than its room, from `step` away: the front goes on into the cell beyond. */
function overflow(grid: BedGrid, n: number, step: number): void {
  const { mortar, gap, state, columns } = grid;
  const between =
    (state[n - 1]! >= FULL && state[n + 1]! >= FULL) || (state[n - columns]! >= FULL && state[n + columns]! >= FULL);
  if (between) level(grid, n);
  else if (state[n + step] === EMPTY) {
    mortar[n + step] = mortar[n + step]! + (mortar[n]! - gap[n]!);
    mortar[n] = gap[n]!;
  }
}

/**
 * Sends what each cell has too much of downhill, from the highest pressure to the lowest: to the one or two neighbours
 * its pressure came from, on into the front cells, or out into the joint.
 * @returns the volume pushed out past the tile, as a column over one cell, mm
 */
export function route(grid: BedGrid): number {
  const { mortar, gap, order, from, share, state, columns } = grid;
  let out = 0;
  for (let k = grid.taken - 1; k >= 0; k -= 1) {
    const n = order[k]!;
    const excess = mortar[n]! - gap[n]!;
    if (excess <= 0) continue;
    mortar[n] = gap[n]!;
    const sides = from[n]!;
    const x = (sides & 1) !== 0 ? n - 1 : n + 1;
    const y = (sides & 4) !== 0 ? n - columns : n + columns;
    const part = (sides & 12) === 0 ? excess : (sides & 3) === 0 ? 0 : (excess * share[n]!) / 255;
    mortar[x] = mortar[x]! + part;
    mortar[y] = mortar[y]! + (excess - part);
    if (state[x] === OPEN) out += part;
    else if (state[x] === EMPTY && mortar[x]! > gap[x]!) overflow(grid, x, x - n);
    if (state[y] === OPEN) out += excess - part;
    else if (state[y] === EMPTY && mortar[y]! > gap[y]!) overflow(grid, y, y - n);
  }
  return out;
}
