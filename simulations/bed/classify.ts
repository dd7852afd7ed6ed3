import { type BedGrid, EMPTY, FULL, OPEN } from './grid.ts';
import { spanOf } from './layout.ts';

/** A cell fills when its mortar meets the tile; the slack is far below anything that can be seen. */
const MEETS = 1 - 1e-9;
/** Once full it stays so until the tile has risen by about a mortar's yield strain (0.5–5 %, from memory). */
const HOLDS = 0.99;

/**
 * Marks each cell under the tile full or empty, and what has met mortar by how it met it.
 * @param touched bits of `mark` for a cell that meets mortar for the first time
 * @returns how many changed: the voids must be looked for again only then
 */
export function classify(grid: BedGrid, touched: number): number {
  const { mortar, gap, pressure, state, mark } = grid;
  const [first, past] = spanOf(grid);
  let changed = 0;
  for (let n = first; n < past; n += 1) {
    const was = state[n]!;
    if (was === OPEN) continue;
    const holds = was >= FULL;
    const full = mortar[n]! >= gap[n]! * (holds ? HOLDS : MEETS);
    if (full !== holds) changed += 1;
    state[n] = full ? FULL : EMPTY;
    pressure[n] = full ? Infinity : -1;
    if (full && mark[n] === 0) mark[n] = touched;
  }
  return changed;
}
