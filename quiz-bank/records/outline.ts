import type { PulledVoid } from '../../simulations/judge/pull-types.ts';

/** A pulled tile marked on its outline: which squares of an even grid are bare, row by row from the upper left. */
export interface MarkedTile {
  columns: number;
  rows: number;
  bare: readonly boolean[];
}

export interface OutlineReading {
  /** Share of the squares that hold mortar, 0…1. */
  coverage: number;
  /** Bare squares that touch by a side, as one void each. */
  voids: PulledVoid[];
}

/**
 * Reads a marked outline.
 * @param lengthMm,widthMm the tile, along the columns and along the rows
 * @returns the coverage, and each void with its area and its least distance to an edge and to a corner, mm
 */
export function readOutline(marked: MarkedTile, lengthMm: number, widthMm: number): OutlineReading {
  const { columns, rows, bare } = marked;
  const cellLength = lengthMm / columns;
  const cellWidth = widthMm / rows;
  const seen = new Set<number>();
  const voids: PulledVoid[] = [];
  const isBare = (column: number, row: number): boolean =>
    column >= 0 && column < columns && row >= 0 && row < rows && bare[row * columns + column] === true;
  for (let start = 0; start < columns * rows; start++) {
    if (bare[start] !== true || seen.has(start)) continue;
    const heap = [start];
    seen.add(start);
    let cells = 0;
    let toEdge = Infinity;
    let toCorner = Infinity;
    for (let at = heap.pop(); at !== undefined; at = heap.pop()) {
      const column = at % columns;
      const row = Math.floor(at / columns);
      cells += 1;
      // Distances from the square's nearest side: a void drawn to the rim reaches the rim.
      const across = Math.min(column, columns - 1 - column) * cellLength;
      const down = Math.min(row, rows - 1 - row) * cellWidth;
      toEdge = Math.min(toEdge, across, down);
      toCorner = Math.min(toCorner, Math.hypot(across, down));
      for (const [c, r] of [
        [column + 1, row],
        [column - 1, row],
        [column, row + 1],
        [column, row - 1],
      ] as const) {
        const next = r * columns + c;
        if (!isBare(c, r) || seen.has(next)) continue;
        seen.add(next);
        heap.push(next);
      }
    }
    voids.push({ areaMm2: cells * cellLength * cellWidth, toEdgeMm: toEdge, toCornerMm: toCorner });
  }
  const count = bare.filter(Boolean).length;
  return { coverage: 1 - count / (columns * rows), voids };
}
