import { bankTerm, frontDistance, markFronts } from './fronts.ts';
import { type BedGrid, DONE, EMPTY, FULL, OPEN, WAITING } from './grid.ts';

/** What the march needs besides the grid. */
export interface MarchTerms {
  yieldPa: number;
  /** Added at every front: 1.5 τ, or nothing. */
  endPa: number;
  /** Gauge pressure of each void by its label, Pa. */
  gaugePa: Float64Array;
}

/** Sides of a cell in `from`; the first two are x, the others y. */
const LEFT = 1;
const RIGHT = 2;
const BELOW = 4;
const ABOVE = 8;
/** The cell lies at a front. */
const AT_FRONT = 16;
const X_SIDES = LEFT | RIGHT;
const Y_SIDES = BELOW | ABOVE;

/** Width of a group in the least climb over a cell: wider loses accuracy and gains no time. */
const GROUP = 0.6;

/** Where the pressure of a cell would come from along one axis: level, distance in cells, side. */
const offer = { level: 0, distance: 1, side: 0 };

/** The better of a cell's two sides along an axis, fronts and cells already done; side 0 when there is neither. */
function bestOffer(grid: BedGrid, terms: MarchTerms, n: number, step: number, rise: number, low: number): void {
  const { state, pressure, label } = grid;
  let best = Infinity;
  offer.side = 0;
  for (let turn = 0; turn < 2; turn += 1) {
    const way = turn === 0 ? -step : step;
    const next = n + way;
    const s = state[next]!;
    if (s !== DONE && s > EMPTY) continue;
    let level = s === DONE ? pressure[next]! : terms.endPa + terms.gaugePa[label[next]!]!;
    if (s === OPEN && terms.endPa > 0) level += terms.yieldPa * bankTerm(grid, n, next);
    const distance = s === DONE ? 1 : frontDistance(grid, next, next + way);
    if (level + distance * rise >= best) continue;
    best = level + distance * rise;
    offer.level = level;
    offer.distance = distance;
    offer.side = turn === 0 ? low : 2 * low;
  }
}

/** Pressure of a cell at a front from all its sides, the slow and general way; sets where it comes from. */
function solveAtFront(grid: BedGrid, terms: MarchTerms, n: number, rise: number): number {
  bestOffer(grid, terms, n, 1, rise, LEFT);
  const { level: a, distance: da, side: sideX } = offer;
  bestOffer(grid, terms, n, grid.columns, rise, BELOW);
  const { level: b, distance: db, side: sideY } = offer;
  if (sideX === 0 || (sideY !== 0 && b + db * rise <= a)) {
    grid.from[n] = AT_FRONT | sideY;
    grid.share[n] = 0;
    return b + db * rise;
  }
  if (sideY === 0 || a + da * rise <= b) {
    grid.from[n] = AT_FRONT | sideX;
    grid.share[n] = 255;
    return a + da * rise;
  }
  const wa = 1 / (da * da);
  const wb = 1 / (db * db);
  const p = (wa * a + wb * b + Math.sqrt((wa + wb) * rise * rise - wa * wb * (a - b) * (a - b))) / (wa + wb);
  const gx = (p - a) / da;
  grid.from[n] = AT_FRONT | sideX | sideY;
  grid.share[n] = (255 * gx) / (gx + (p - b) / db) + 0.5;
  return p;
}

/** Puts all full cells at fronts on the waiting list. */
function startAtFronts(
  grid: BedGrid,
  terms: MarchTerms,
  climb: number,
): { waiting: number; least: number; widest: number } {
  const { gap, pressure, state, order, columns, rim, tileColumns, tileRows } = grid;
  let waiting = 0;
  let least = Infinity;
  let widest = 0;
  for (let row = rim; row < rim + tileRows; row += 1) {
    const start = row * columns + rim;
    for (let n = start; n < start + tileColumns; n += 1) {
      if (state[n] !== FULL) continue;
      const g = gap[n]!;
      if (g > widest) widest = g;
      if (state[n - 1]! > EMPTY && state[n + 1]! > EMPTY && state[n - columns]! > EMPTY && state[n + columns]! > EMPTY)
        continue;
      const p = solveAtFront(grid, terms, n, climb / g);
      pressure[n] = p;
      state[n] = WAITING;
      if (p < least) least = p;
      order[waiting] = n;
      waiting += 1;
    }
  }
  return { waiting, least, widest };
}

/**
 * Pressure of the bed at yield: |∇p| = 2τ/g in full cells, given at the fronts (an eikonal problem). Cells are taken
 * in groups of rising pressure; away from the fronts a cell is reached first from one side, then perhaps from the other
 * axis, and never again, so the whole is linear in the cells. `order` is afterwards a way downhill for the mortar.
 */
export function march(grid: BedGrid, terms: MarchTerms): void {
  const { gap, pressure, state, order, from, share, columns, cellMm } = grid;
  const climb = 2 * terms.yieldPa * cellMm;
  // With all fronts at one level the near one is the lower one; a pocket's may not be.
  const isLevel = terms.gaugePa.every((gauge) => gauge === 0);
  markFronts(grid);
  const begin = startAtFronts(grid, terms, climb);
  const group = begin.widest > 0 ? (GROUP * climb) / begin.widest : 0;
  let { waiting, least } = begin;
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
        if (s === FULL) {
          pressure[next] = p + climb / gap[next]!;
          from[next] = side === 0 ? RIGHT : side === 1 ? LEFT : side === 2 ? ABOVE : BELOW;
          share[next] = side < 2 ? 255 : 0;
          state[next] = WAITING;
          order[waiting] = next;
          waiting += 1;
        } else if (s === WAITING) {
          const before = pressure[next]!;
          if (before <= p) continue;
          const sides = from[next]!;
          let value: number;
          if ((sides & AT_FRONT) !== 0) {
            if (isLevel && (sides & (side < 2 ? X_SIDES : Y_SIDES)) !== 0) continue;
            const wasShare = share[next]!;
            value = solveAtFront(grid, terms, next, climb / gap[next]!);
            if (value >= before) {
              from[next] = sides;
              share[next] = wasShare;
              continue;
            }
          } else {
            // The side it was reached from before on this axis was taken earlier, so it is the lower one.
            if ((sides & (side < 2 ? X_SIDES : Y_SIDES)) !== 0) continue;
            const other =
              pressure[
                sides === LEFT
                  ? next - 1
                  : sides === RIGHT
                    ? next + 1
                    : sides === BELOW
                      ? next - columns
                      : next + columns
              ]!;
            const rise = climb / gap[next]!;
            const apart = p - other;
            const square = 2 * rise * rise - apart * apart;
            if (square <= 0) continue;
            value = 0.5 * (p + other + Math.sqrt(square));
            if (value >= before) continue;
            const here = value - p;
            const part = (255 * here) / (here + value - other) + 0.5;
            from[next] = sides | (side === 0 ? RIGHT : side === 1 ? LEFT : side === 2 ? ABOVE : BELOW);
            share[next] = side < 2 ? part : 255.5 - part + 0.5;
          }
          pressure[next] = value;
          if (value < least) least = value;
        }
      }
    }
  }
  grid.taken = taken;
}
