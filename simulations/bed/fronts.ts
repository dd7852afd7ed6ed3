import { type BedGrid, EMPTY, FULL } from './grid.ts';
import { spanOf } from './layout.ts';

/** Passive resistance of a bank of yield stress τ, in τ (Rankine's 2c for undrained earth, from memory). */
const BANK_TERM = 2;

/** Part of a front cell that the front has crossed: the mortar over the level it runs on. */
function crossed(grid: BedGrid, n: number): number {
  const foot = grid.foot[n]!;
  const room = grid.gap[n]! - foot;
  const part = room > 0 ? (grid.mortar[n]! - foot) / room : 1;
  return part < 0 ? 0 : part > 1 ? 1 : part;
}

/** Notes in each empty cell beside a full one how much of it its front has crossed (see `pressure` in the grid). */
export function markFronts(grid: BedGrid): void {
  const { state, pressure, columns } = grid;
  const [first, past] = spanOf(grid);
  for (let n = first; n < past; n += 1) {
    if (state[n] !== EMPTY) continue;
    if (state[n - 1]! >= FULL || state[n + 1]! >= FULL || state[n - columns]! >= FULL || state[n + columns]! >= FULL)
      pressure[n] = -1 - crossed(grid, n);
  }
}

/**
 * Distance in cells from the middle of a full cell to the front in its empty neighbour: half a cell and the part the
 * front has crossed, without which the load is several per cent off. Two fronts in one cell share it.
 * @param beyond the cell on the other side of the neighbour
 */
export function frontDistance(grid: BedGrid, next: number, beyond: number): number {
  if (grid.state[next] !== EMPTY) return 0.5;
  const part = -1 - grid.pressure[next]!;
  return grid.state[beyond]! >= FULL ? 0.5 + 0.5 * part : 0.5 + part;
}

/**
 * What mortar standing in the joint or round the tile, higher than the tile's underside, adds at the tile's edge, in
 * yield stresses: nothing where it is level, up to the full passive resistance where it stands twice the gap high.
 */
export function bankTerm(grid: BedGrid, n: number, outside: number): number {
  const over = grid.mortar[outside]! / grid.gap[n]! - 1;
  return over <= 0 ? 0 : over >= 1 ? BANK_TERM : BANK_TERM * over;
}
