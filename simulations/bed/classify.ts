import { type BedGrid, EMPTY, FULL, OPEN } from './grid.ts';

/** A cell fills when its mortar meets the tile; the slack is far below anything that can be seen. */
const MEETS = 1 - 1e-9;
/** Once full it stays so until the tile has risen by about a mortar's yield strain (0.5–5 %, from memory). */
const HOLDS = 0.99;

/**
 * Marks each cell under the tile full or empty.
 * @returns how many changed: the voids must be looked for again only then
 */
export function classify(grid: BedGrid): number {
  const { mortar, gap, pressure, state, columns, rim, tileColumns, tileRows } = grid;
  let changed = 0;
  for (let row = rim; row < rim + tileRows; row += 1) {
    const start = row * columns + rim;
    for (let n = start; n < start + tileColumns; n += 1) {
      const was = state[n]!;
      if (was === OPEN) continue;
      const holds = was >= FULL;
      const full = mortar[n]! >= gap[n]! * (holds ? HOLDS : MEETS);
      if (full !== holds) changed += 1;
      state[n] = full ? FULL : EMPTY;
      pressure[n] = full ? Infinity : -1;
    }
  }
  return changed;
}
