import { frontDistance } from './fronts.ts';
import { AT_FRONT, type BedGrid, EMPTY, FULL, LISTED, OPEN, PASSED } from './grid.ts';
import { frontLevel, type MarchTerms } from './march.ts';
import { spill } from './spill.ts';

/** Cells that were handed more after they had been passed. Grown when short. */
let again = new Int32Array(1024);

function longer(list: Int32Array<ArrayBuffer>): Int32Array<ArrayBuffer> {
  const twice = new Int32Array(2 * list.length);
  twice.set(list);
  return twice;
}

/** Fall of pressure a cell towards a neighbour, Pa; nothing where the neighbour is not lower. */
function fallTo(grid: BedGrid, terms: MarchTerms, n: number, step: number): number {
  const next = n + step;
  const { state, pressure } = grid;
  const isFull = state[next]! >= FULL;
  const level = isFull ? pressure[next]! : frontLevel(grid, terms, n, next);
  const fall = pressure[n]! - level;
  return fall > 0 ? fall / (isFull ? 1 : frontDistance(grid, next, next + step)) : 0;
}

/**
 * Part of an axis's flow that goes to its first side. A cell on a ridge of the pressure is parted where the ridge runs
 * in it: half and half when both sides fall alike, all to one when only that side is lower.
 */
const partOf = (first: number, second: number): number =>
  first >= second ? 1 - (0.5 * second) / first : (0.5 * first) / second;

/** Adds what has gone out to the columns in the joint. @returns where the list goes on with cells under the tile */
function bank({ mortar, order, pressure, state }: BedGrid, from: number): number {
  let begin = from;
  for (let k = from; k < order.length; k += 1) {
    const n = order[k]!;
    if (state[n] !== OPEN) continue;
    mortar[n] = mortar[n]! + pressure[n]!;
    pressure[n] = 0;
    order[k] = order[begin]!;
    begin += 1;
  }
  return begin;
}

/**
 * Sends what each cell has too much of downhill, from the highest pressure to the lowest, by the slope of the pressure:
 * to its lower neighbours, into the front cells, or out into the joint.
 * @returns the volume pushed out past the tile, as a column over one cell, mm
 */
export function route(grid: BedGrid, terms: MarchTerms): number {
  const { mortar, gap, order, pressure, state, mark, columns } = grid;
  let out = 0;
  let full = order.length;
  for (let k = grid.taken - 1; k >= 0; k -= 1) {
    again[0] = order[k]!;
    let left = 1;
    while (left > 0) {
      left -= 1;
      const n = again[left]!;
      const s = state[n]!;
      if (s < PASSED) state[n] = s + PASSED;
      const excess = mortar[n]! - gap[n]!;
      if (excess <= 0) continue;
      let l: number;
      let r: number;
      let d: number;
      let u: number;
      if ((s & AT_FRONT) === AT_FRONT) {
        l = fallTo(grid, terms, n, -1);
        r = fallTo(grid, terms, n, 1);
        d = fallTo(grid, terms, n, -columns);
        u = fallTo(grid, terms, n, columns);
      } else {
        const p = pressure[n]!;
        l = p - pressure[n - 1]!;
        r = p - pressure[n + 1]!;
        d = p - pressure[n - columns]!;
        u = p - pressure[n + columns]!;
        if (l < 0) l = 0;
        if (r < 0) r = 0;
        if (d < 0) d = 0;
        if (u < 0) u = 0;
      }
      const x = l > r ? l : r;
      const y = d > u ? d : u;
      if (x + y <= 0) continue;
      mortar[n] = gap[n]!;
      const alongX = (excess * x) / (x + y);
      for (let side = 0; side < 4; side += 1) {
        const fall = side === 0 ? l : side === 1 ? r : side === 2 ? d : u;
        if (fall === 0) continue;
        const other = side === 0 ? r : side === 1 ? l : side === 2 ? u : d;
        const next = side === 0 ? n - 1 : side === 1 ? n + 1 : side === 2 ? n - columns : n + columns;
        const given = (side < 2 ? alongX : excess - alongX) * partOf(fall, other);
        const to = state[next]!;
        if (to === OPEN) {
          // Kept apart until all have given: the bank out there must not grow while the mortar behind it is shared out.
          out += given;
          if (pressure[next] === 0) {
            full -= 1;
            order[full] = next;
          }
          pressure[next] = pressure[next]! + given;
          continue;
        }
        const before = mortar[next]!;
        mortar[next] = before + given;
        if (to >= PASSED) {
          if (left === again.length) again = longer(again);
          again[left] = next;
          left += 1;
        } else if (to === EMPTY && before + given > gap[next]! && mark[next]! < LISTED) {
          mark[next] = mark[next]! + LISTED;
          full -= 1;
          order[full] = next;
        }
      }
    }
  }
  spill(grid, bank(grid, full));
  return out;
}
