import type { Bed } from './bed.ts';
import { contactOf } from './contact.ts';
import { OPEN } from './grid.ts';

/** Corners and edges are judged within two inches of them, mm (the trade's measure; see the rules). */
export const NEAR_MM = 50.8;
/** Smaller holes are not counted as voids near an edge, mm². */
const COUNTED_MM2 = 25;

export interface VoidFigures {
  largestMm2: number;
  /** Middle of the largest, mm. */
  largestAt: [number, number];
  nearEdge: number;
}

/** Regions of the back without contact, joined by sides; a front cell counts by its empty part. */
export function voidFigures(bed: Bed): VoidFigures {
  const { state, columns, rim, tileColumns, tileRows, cellMm, originMm, list } = bed.grid;
  const seen = new Uint8Array(state.length);
  const { lengthMm, widthMm } = bed.setup.tile;
  const area = cellMm * cellMm;
  const isVoid = (n: number): boolean => state[n] !== OPEN && contactOf(bed, n) < 0.999;
  const figures: VoidFigures = { largestMm2: 0, largestAt: [0, 0], nearEdge: 0 };
  for (let row = rim; row < rim + tileRows; row += 1) {
    for (let column = rim; column < rim + tileColumns; column += 1) {
      const first = row * columns + column;
      if (seen[first] === 1 || !isVoid(first)) continue;
      let top = 1;
      list[0] = first;
      seen[first] = 1;
      let size = 0;
      let sumX = 0;
      let sumY = 0;
      let near = 0;
      while (top > 0) {
        top -= 1;
        const n = list[top]!;
        const empty = (1 - contactOf(bed, n)) * area;
        const r = Math.floor(n / columns);
        const x = originMm[0] + (n - r * columns) * cellMm;
        const y = originMm[1] + r * cellMm;
        size += empty;
        sumX += empty * x;
        sumY += empty * y;
        if (lengthMm / 2 - Math.abs(x) < NEAR_MM || widthMm / 2 - Math.abs(y) < NEAR_MM) near += empty;
        for (let side = 0; side < 4; side += 1) {
          const next = side === 0 ? n - 1 : side === 1 ? n + 1 : side === 2 ? n - columns : n + columns;
          if (seen[next] === 1 || !isVoid(next)) continue;
          seen[next] = 1;
          list[top] = next;
          top += 1;
        }
      }
      if (near >= COUNTED_MM2) figures.nearEdge += 1;
      if (size > figures.largestMm2) {
        figures.largestMm2 = size;
        figures.largestAt = [sumX / size, sumY / size];
      }
    }
  }
  return figures;
}
