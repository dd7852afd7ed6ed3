import { lengthOf } from '../numbers/plain.ts';
import { AT_FRONT, type BedGrid, EMPTY, FULL } from './grid.ts';

/** How the tile moves over the bed, per mm of path at its rim or centre: a shift and a turn about its centre. */
export interface SlideField {
  shiftX: number;
  shiftY: number;
  /** Radians per mm of path. */
  turn: number;
}

/** Widening over slide by |cosine| between slide and front normal, at equal steps from 0 to 1. */
export type RateByAngle = Float64Array;

export interface FrontGain {
  /** Mortar that the fronts take up per mm of path, mm³. */
  volume: number;
  /** What of it goes with each entry of the rates: length × depth of the fronts at that angle, mm², halved. */
  byAngle: Float64Array;
  /** Fastest front, cells per mm of path. */
  fastest: number;
}

/** The volume of a gain at other rates, the fronts as they were: mm³ per mm of path. */
export function volumeAt({ byAngle }: FrontGain, rates: RateByAngle): number {
  let volume = 0;
  for (let n = 0; n < byAngle.length; n += 1) volume += byAngle[n]! * rates[n]!;
  return volume;
}

/** How much of a cell is mortar-filled between floor and tile, as the fronts see it. */
const filled = (grid: BedGrid, n: number): number =>
  grid.state[n]! >= FULL ? 1 : grid.state[n] === EMPTY ? -1 - grid.pressure[n]! : 1;

/** The part of a cell's side that a front across it has taken already: only fronts that lie beside it take of it. */
const taken = (grid: BedGrid, n: number, beside: number): number =>
  grid.state[n - beside]! >= FULL || grid.state[n + beside]! >= FULL ? filled(grid, n) : 0;

/**
 * What the fronts would take up as the tile slides: each moves at half its ridge's widening, by its own direction to
 * the slide. Normals come from differences over the nine cells round a cell. A front's length is the sum of the drops of
 * what is taken from cell to cell, so that a hollow shut in on all sides has the length of its fronts and not of the
 * full cells round it. The tile's own edge is no front: it moves on over mortar, and comes back.
 */
export function frontGain(grid: BedGrid, field: SlideField, rates: RateByAngle): FrontGain {
  const { state, gap, foot, pressure, columns, rim, tileColumns, tileRows, cellMm, originMm } = grid;
  const steps = rates.length - 1;
  const byAngle = new Float64Array(rates.length);
  const shift = lengthOf(field.shiftX, field.shiftY);
  let fastest = 0;
  for (let row = rim; row < rim + tileRows; row += 1) {
    const y = originMm[1] + row * cellMm;
    for (let column = rim; column < rim + tileColumns; column += 1) {
      const n = row * columns + column;
      const s = state[n]!;
      if (s !== AT_FRONT && (s !== EMPTY || pressure[n] === -1)) continue;
      const hereX = s === EMPTY ? taken(grid, n, columns) : 1;
      const hereY = s === EMPTY ? taken(grid, n, 1) : 1;
      let lengthX = 0;
      let lengthY = 0;
      let faces = 0;
      let depth = 0;
      for (let side = 0; side < 4; side += 1) {
        const next = side === 0 ? n - 1 : side === 1 ? n + 1 : side === 2 ? n - columns : n + columns;
        if (state[next] !== EMPTY) continue;
        const drop = side < 2 ? hereX - taken(grid, next, columns) : hereY - taken(grid, next, 1);
        if (drop <= 0) continue;
        if (side < 2) lengthX += drop;
        else lengthY += drop;
        faces += drop;
        depth += drop * (gap[next]! - foot[next]!);
      }
      if (faces === 0) continue;
      const x = originMm[0] + column * cellMm;
      const moveX = field.shiftX - field.turn * y;
      const moveY = field.shiftY + field.turn * x;
      const move = field.turn === 0 ? shift : lengthOf(moveX, moveY);
      if (move === 0) continue;
      const below = n - columns;
      const above = n + columns;
      const bl = filled(grid, below - 1);
      const br = filled(grid, below + 1);
      const al = filled(grid, above - 1);
      const ar = filled(grid, above + 1);
      let normalX = br + 2 * filled(grid, n + 1) + ar - bl - 2 * filled(grid, n - 1) - al;
      let normalY = al + 2 * filled(grid, above) + ar - bl - 2 * filled(grid, below) - br;
      if (s !== EMPTY && state[n - 1] === EMPTY && state[n + 1] === EMPTY) normalX = 8;
      if (s !== EMPTY && state[below] === EMPTY && state[above] === EMPTY) normalY = 8;
      const size = lengthOf(normalX, normalY);
      if (size === 0) continue;
      const cosine = Math.abs(moveX * normalX + moveY * normalY) / (size * move);
      const place = Math.min(steps, cosine * steps);
      const low = Math.min(steps - 1, Math.floor(place));
      const part = place - low;
      const rate = (rates[low]! + part * (rates[low + 1]! - rates[low]!)) * move;
      const speed = (0.5 * rate) / cellMm;
      if (speed > fastest) fastest = speed;
      const length = (Math.abs(normalX) * lengthX + Math.abs(normalY) * lengthY) / size;
      const takes = 0.5 * move * cellMm * length * (depth / faces);
      byAngle[low] = byAngle[low]! + (1 - part) * takes;
      byAngle[low + 1] = byAngle[low + 1]! + part * takes;
    }
  }
  const gain = { volume: 0, byAngle, fastest };
  gain.volume = volumeAt(gain, rates);
  return gain;
}
