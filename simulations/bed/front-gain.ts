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
  /** Fastest front, cells per mm of path. */
  fastest: number;
}

/** How much of a cell is mortar-filled between floor and tile, as the fronts see it. */
const filled = (grid: BedGrid, n: number): number =>
  grid.state[n]! >= FULL ? 1 : grid.state[n] === EMPTY ? -1 - grid.pressure[n]! : 1;

/**
 * What the fronts would take up as the tile slides: each moves at half its ridge's widening, by its own direction to
 * the slide. Normals come from differences over the nine cells round a full cell at a front. The tile's own edge is
 * no front: it moves on over mortar, and comes back.
 */
export function frontGain(grid: BedGrid, field: SlideField, rates: RateByAngle): FrontGain {
  const { state, gap, foot, columns, rim, tileColumns, tileRows, cellMm, originMm } = grid;
  const steps = rates.length - 1;
  let volume = 0;
  let fastest = 0;
  for (let row = rim; row < rim + tileRows; row += 1) {
    const y = originMm[1] + row * cellMm;
    for (let column = rim; column < rim + tileColumns; column += 1) {
      const n = row * columns + column;
      if (state[n] !== AT_FRONT) continue;
      let facesX = 0;
      let facesY = 0;
      let depth = 0;
      for (let side = 0; side < 4; side += 1) {
        const next = side === 0 ? n - 1 : side === 1 ? n + 1 : side === 2 ? n - columns : n + columns;
        if (state[next] !== EMPTY) continue;
        if (side < 2) facesX += 1;
        else facesY += 1;
        depth += gap[next]! - foot[next]!;
      }
      const faces = facesX + facesY;
      if (faces === 0) continue;
      const x = originMm[0] + column * cellMm;
      const moveX = field.shiftX - field.turn * y;
      const moveY = field.shiftY + field.turn * x;
      const move = lengthOf(moveX, moveY);
      if (move === 0) continue;
      const below = n - columns;
      const above = n + columns;
      const bl = filled(grid, below - 1);
      const br = filled(grid, below + 1);
      const al = filled(grid, above - 1);
      const ar = filled(grid, above + 1);
      let normalX = br + 2 * filled(grid, n + 1) + ar - bl - 2 * filled(grid, n - 1) - al;
      let normalY = al + 2 * filled(grid, above) + ar - bl - 2 * filled(grid, below) - br;
      if (facesX === 2) normalX = 8;
      if (facesY === 2) normalY = 8;
      const size = lengthOf(normalX, normalY);
      if (size === 0) continue;
      const nx = Math.abs(normalX) / size;
      const ny = Math.abs(normalY) / size;
      const cosine = Math.abs(moveX * normalX + moveY * normalY) / (size * move);
      const place = Math.min(steps, cosine * steps);
      const low = Math.min(steps - 1, Math.floor(place));
      const rate = (rates[low]! + (place - low) * (rates[low + 1]! - rates[low]!)) * move;
      const speed = (0.5 * rate) / cellMm;
      if (speed > fastest) fastest = speed;
      volume += 0.5 * rate * cellMm * (nx * facesX + ny * facesY) * (depth / faces);
    }
  }
  return { volume, fastest };
}
