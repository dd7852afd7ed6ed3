import { frontDistance } from './fronts.ts';
import { AT_FRONT, type BedGrid, EMPTY, FULL, LISTED, OPEN, PASSED, WAITS } from './grid.ts';
import { spanOf } from './layout.ts';
import { frontLevel, type MarchTerms } from './march.ts';
import { spill } from './spill.ts';

/** Cells to be passed on next. Grown when short. */
let ready = new Int32Array(1024);
const falls = new Float64Array(4);

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
function bank({ mortar, list, pressure, state }: BedGrid, from: number): number {
  let begin = from;
  for (let k = from; k < list.length; k += 1) {
    const n = list[k]!;
    if (state[n] !== OPEN) continue;
    mortar[n] = mortar[n]! + pressure[n]!;
    pressure[n] = 0;
    list[k] = list[begin]!;
    begin += 1;
  }
  return begin;
}

/** Falls of pressure of a cell at a front towards its four sides, into `falls`. */
function fallsAtFront(grid: BedGrid, terms: MarchTerms, n: number): void {
  for (let side = 0; side < 4; side += 1) {
    const step = side === 0 ? -1 : side === 1 ? 1 : side === 2 ? -grid.columns : grid.columns;
    falls[side] = fallTo(grid, terms, n, step);
  }
}

/**
 * Sends what each cell has too much of downhill, by the slope of the pressure: to its lower neighbours, into the front
 * cells, or out into the joint. A cell gives once, when all higher ones beside it have given; one met too early waits
 * for the last of them. (So any order will do; along the rows the memory is read in one go.)
 * @returns the volume pushed out past the tile, as a column over one cell, mm
 */
export function route(grid: BedGrid, terms: MarchTerms): number {
  const { mortar, gap, list, pressure, state, mark, columns } = grid;
  let out = 0;
  let full = list.length;
  const [first, past] = spanOf(grid);
  for (let k = first; k < past; k += 1) {
    if (state[k]! < FULL || state[k]! >= PASSED) continue;
    ready[0] = k;
    let left = 1;
    while (left > 0) {
      left -= 1;
      const n = ready[left]!;
      const s = state[n]!;
      if (s >= PASSED) continue;
      const p = pressure[n]!;
      const pl = pressure[n - 1]!;
      const pr = pressure[n + 1]!;
      const pd = pressure[n - columns]!;
      const pu = pressure[n + columns]!;
      // Early while a full neighbour of higher pressure has not given yet.
      if (
        (pl > p && state[n - 1]! < PASSED) ||
        (pr > p && state[n + 1]! < PASSED) ||
        (pd > p && state[n - columns]! < PASSED) ||
        (pu > p && state[n + columns]! < PASSED)
      ) {
        state[n] = s | WAITS;
        continue;
      }
      state[n] = s | PASSED;
      const excess = mortar[n]! - gap[n]!;
      let l = 0;
      let r = 0;
      let d = 0;
      let u = 0;
      if ((s & AT_FRONT) === AT_FRONT) {
        fallsAtFront(grid, terms, n);
        l = falls[0]!;
        r = falls[1]!;
        d = falls[2]!;
        u = falls[3]!;
      } else {
        l = pl < p ? p - pl : 0;
        r = pr < p ? p - pr : 0;
        d = pd < p ? p - pd : 0;
        u = pu < p ? p - pu : 0;
      }
      const x = l > r ? l : r;
      const y = d > u ? d : u;
      if (x + y <= 0) continue;
      const gives = excess > 0;
      if (gives) mortar[n] = gap[n]!;
      const alongX = gives ? (excess * x) / (x + y) : 0;
      for (let side = 0; side < 4; side += 1) {
        const fall = side === 0 ? l : side === 1 ? r : side === 2 ? d : u;
        if (fall === 0) continue;
        const next = side === 0 ? n - 1 : side === 1 ? n + 1 : side === 2 ? n - columns : n + columns;
        const to = state[next]!;
        if ((to & WAITS) === WAITS) {
          if (left === ready.length) ready = longer(ready);
          ready[left] = next;
          left += 1;
        }
        if (!gives) continue;
        const other = side === 0 ? r : side === 1 ? l : side === 2 ? u : d;
        const axis = side < 2 ? alongX : excess - alongX;
        const given = other === 0 ? axis : axis * partOf(fall, other);
        if (to === OPEN) {
          // Kept apart until all have given: the bank out there must not grow while the mortar behind it is shared out.
          out += given;
          if (pressure[next] === 0) {
            full -= 1;
            list[full] = next;
          }
          pressure[next] = pressure[next]! + given;
          continue;
        }
        const now = mortar[next]! + given;
        mortar[next] = now;
        if (to === EMPTY && now > gap[next]! && mark[next]! < LISTED) {
          mark[next] = mark[next]! + LISTED;
          full -= 1;
          list[full] = next;
        }
      }
    }
  }
  spill(grid, bank(grid, full));
  return out;
}
