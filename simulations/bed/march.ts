import { bankTerm, frontDistance, markFronts } from './fronts.ts';
import { AT_FRONT, type BedGrid, EMPTY, FULL, OPEN, QUEUED } from './grid.ts';
import { spanOf } from './layout.ts';

/** What the march needs besides the grid. */
export interface MarchTerms {
  yieldPa: number;
  /** Added at every front: 1.5 τ, or nothing. */
  endPa: number;
  /** Gauge pressure of each void by its label, Pa. */
  gaugePa: Float64Array;
}

/**
 * Width of a group in the least climb over a cell: wider means more cells looked at again, narrower more rounds of what
 * waits, and cells met in an order that jumps about the memory. Measured: 5 takes four fifths of the time of 0.6.
 */
const GROUP = 5;
/** Smaller betterments are rounding, in shares of the pressure; at fronts, nearness in shares of a climb that bars one. */
const SAME = 1e-12;
const LEVEL_WITH = 1e-4;

/** Cells already taken whose pressure turned out lower, to be passed on at once. Grown when short. */
let again = new Int32Array(1024);

function longer(list: Int32Array<ArrayBuffer>): Int32Array<ArrayBuffer> {
  const twice = new Int32Array(2 * list.length);
  twice.set(list);
  return twice;
}

/** Pressure that meets |∇p| = rise from the levels a and b, distances da and db in cells away along x and y. */
function upwind(a: number, da: number, b: number, db: number, rise: number): number {
  if (b + db * rise <= a) return b + db * rise;
  if (a + da * rise <= b) return a + da * rise;
  const wa = 1 / (da * da);
  const wb = 1 / (db * db);
  return (wa * a + wb * b + Math.sqrt((wa + wb) * rise * rise - wa * wb * (a - b) * (a - b))) / (wa + wb);
}

/** Level the air or the joint at `next` sets for the full cell `n`, Pa. */
export function frontLevel(grid: BedGrid, terms: MarchTerms, n: number, next: number): number {
  const level = terms.endPa + terms.gaugePa[grid.label[next]!]!;
  return grid.state[next] === OPEN && terms.endPa > 0 ? level + terms.yieldPa * bankTerm(grid, n, next) : level;
}

/** Level and distance in cells on the four sides of a cell at a front: left, right, below, above. */
const levels = new Float64Array(4);
const distances = new Float64Array(4);

/** Pressure of a cell at a front: the lowest that any two of its sides, one to an axis, give. */
function solveAtFront(grid: BedGrid, terms: MarchTerms, n: number, rise: number): number {
  const { state, pressure, columns } = grid;
  let least = Infinity;
  for (let side = 0; side < 4; side += 1) {
    const step = side === 0 ? -1 : side === 1 ? 1 : side === 2 ? -columns : columns;
    const next = n + step;
    const isFull = state[next]! >= FULL;
    const level = isFull ? pressure[next]! : frontLevel(grid, terms, n, next);
    const distance = isFull ? 1 : frontDistance(grid, next, next + step);
    levels[side] = level;
    distances[side] = distance;
    if (level + distance * rise < least) least = level + distance * rise;
  }
  for (let x = 0; x < 2; x += 1) {
    const a = levels[x]!;
    if (a >= least) continue;
    for (let y = 2; y < 4; y += 1) {
      const b = levels[y]!;
      if (b >= least) continue;
      const p = upwind(a, distances[x]!, b, distances[y]!, rise);
      if (p < least) least = p;
    }
  }
  return least;
}

/** What waits at the beginning, the least pressure of it, and the widest gap of all full cells, mm. */
interface Begin {
  waiting: number;
  least: number;
  widest: number;
}

/** Puts all full cells at fronts on the waiting list. */
function startAtFronts(grid: BedGrid, terms: MarchTerms, climb: number): Begin {
  const { gap, pressure, state, list, columns } = grid;
  const [first, past] = spanOf(grid);
  let waiting = 0;
  let least = Infinity;
  let widest = 0;
  for (let n = first; n < past; n += 1) {
    if (state[n]! < FULL) continue;
    const g = gap[n]!;
    if (g > widest) widest = g;
    if (state[n - 1]! > EMPTY && state[n + 1]! > EMPTY && state[n - columns]! > EMPTY && state[n + columns]! > EMPTY)
      continue;
    const p = solveAtFront(grid, terms, n, climb / g);
    pressure[n] = p;
    state[n] = AT_FRONT | QUEUED;
    if (p < least) least = p;
    list[waiting] = n;
    waiting += 1;
  }
  return { waiting, least, widest };
}

/** Finds the front cells whose pressure is now lower, beside the voids whose air has fallen. */
function fallenFronts(grid: BedGrid, terms: MarchTerms, climb: number, voids: Uint8Array): Begin {
  const { gap, pressure, state, label, list, columns } = grid;
  const [first, past] = spanOf(grid);
  let waiting = 0;
  let least = Infinity;
  let widest = 0;
  for (let n = first; n < past; n += 1) {
    const s = state[n]!;
    if (s < FULL) continue;
    if (gap[n]! > widest) widest = gap[n]!;
    if (s !== AT_FRONT) continue;
    if (
      voids[label[n - 1]!] === 0 &&
      voids[label[n + 1]!] === 0 &&
      voids[label[n - columns]!] === 0 &&
      voids[label[n + columns]!] === 0
    )
      continue;
    const p = solveAtFront(grid, terms, n, climb / gap[n]!);
    if (p >= pressure[n]! - SAME * p) continue;
    pressure[n] = p;
    state[n] = AT_FRONT + QUEUED;
    if (p < least) least = p;
    list[waiting] = n;
    waiting += 1;
  }
  return { waiting, least, widest };
}

/**
 * Takes the cells that wait, the first of `list`, in groups of rising pressure and hands each one's pressure on to its neighbours; those
 * reached are put on the list. Within a group the order is chance, so a cell that turns out lower after it was taken
 * hands that on at once.
 */
function spread(grid: BedGrid, terms: MarchTerms, climb: number, begin: Begin): void {
  const { gap, pressure, state, list, columns } = grid;
  const group = begin.widest > 0 ? (GROUP * climb) / begin.widest : 0;
  let { waiting, least } = begin;
  // list[0 … taken) is done, list[taken … waiting) waits; a cell that is taken changes places with the first waiting.
  let taken = 0;
  while (taken < waiting) {
    const limit = least + group;
    least = Infinity;
    for (let k = taken; k < waiting; k += 1) {
      const first = list[k]!;
      if (pressure[first]! > limit) {
        if (pressure[first]! < least) least = pressure[first]!;
        continue;
      }
      state[first] = state[first]! - QUEUED;
      list[k] = list[taken]!;
      list[taken] = first;
      taken += 1;
      again[0] = first;
      let left = 1;
      while (left > 0) {
        left -= 1;
        const n = again[left]!;
        const p = pressure[n]!;
        for (let side = 0; side < 4; side += 1) {
          const next = side === 0 ? n - 1 : side === 1 ? n + 1 : side === 2 ? n - columns : n + columns;
          const s = state[next]!;
          if (s < FULL) continue;
          const before = pressure[next]!;
          if (before <= p) continue;
          const rise = climb / gap[next]!;
          if (before === Infinity) {
            // Reached for the first time: from here alone. Other sides have their say when they are taken.
            const value = p + rise;
            pressure[next] = value;
            state[next] = s + QUEUED;
            list[waiting] = next;
            waiting += 1;
            if (value < least) least = value;
            continue;
          }
          let value: number;
          if ((s & AT_FRONT) === AT_FRONT) {
            if (before - p < LEVEL_WITH * rise) continue;
            value = solveAtFront(grid, terms, next, rise);
          } else {
            const l = pressure[next - 1]!;
            const r = pressure[next + 1]!;
            const d = pressure[next - columns]!;
            const u = pressure[next + columns]!;
            const a = l < r ? l : r;
            const b = d < u ? d : u;
            const apart = a < b ? b - a : a - b;
            if (apart >= rise) value = (a < b ? a : b) + rise;
            else value = 0.5 * (a + b + Math.sqrt(2 * rise * rise - apart * apart));
          }
          if (value >= before - SAME * value) continue;
          pressure[next] = value;
          if (s >= QUEUED) {
            if (value < least) least = value;
          } else if (value > limit) {
            state[next] = s + QUEUED;
            list[waiting] = next;
            waiting += 1;
            if (value < least) least = value;
          } else {
            if (left === again.length) again = longer(again);
            again[left] = next;
            left += 1;
          }
        }
      }
    }
  }
}

/**
 * Pressure of the bed at yield: |∇p| = 2τ/g in full cells, given at the fronts (an eikonal problem, upwind differences).
 * The pressures are those of the scheme itself, whatever the order, and the work is linear in the cells.
 */
export function march(grid: BedGrid, terms: MarchTerms): void {
  const climb = 2 * terms.yieldPa * grid.cellMm;
  markFronts(grid);
  spread(grid, terms, climb, startAtFronts(grid, terms, climb));
}

/**
 * The same after the air behind some fronts has fallen: pressures can only fall with it, so it begins at the front cells
 * that do and goes no further than they reach.
 * @param voids 1 for the label of each whose air has fallen
 */
export function marchOn(grid: BedGrid, terms: MarchTerms, voids: Uint8Array): void {
  const climb = 2 * terms.yieldPa * grid.cellMm;
  spread(grid, terms, climb, fallenFronts(grid, terms, climb, voids));
}
