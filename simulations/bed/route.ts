import { type BedGrid, OPEN } from './grid.ts';

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
    if (state[y] === OPEN) out += excess - part;
  }
  return out;
}
