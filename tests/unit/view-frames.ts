import { CELL_STATE, type BedFrame, type BedResult, type CellState } from '@sim/bed/types.ts';

/** A small frame drawn as text, one letter a cell, the top line the greatest y: . outside, o open, t shut in, b bonded, s skinned, j joint. */
export function drawnFrame(lines: string[], over: Partial<BedFrame> = {}): BedFrame {
  const letters: Record<string, CellState> = {
    '.': CELL_STATE.outside,
    o: CELL_STATE.open,
    t: CELL_STATE.trapped,
    b: CELL_STATE.bonded,
    s: CELL_STATE.skinned,
    j: CELL_STATE.joint,
  };
  const rows = lines.length;
  const columns = lines[0]!.length;
  const state = new Uint8Array(columns * rows);
  const gapMm = new Float32Array(columns * rows).fill(NaN);
  const mortarMm = new Float32Array(columns * rows);
  lines.forEach((line, fromTop) => {
    [...line].forEach((letter, column) => {
      const cell = (rows - 1 - fromTop) * columns + column;
      state[cell] = letters[letter]!;
      if (letter === '.' || letter === 'j') return;
      gapMm[cell] = 3;
      mortarMm[cell] = letter === 'b' || letter === 's' ? 3 : 0.5;
    });
  });
  return {
    columns,
    rows,
    cellMm: 1,
    originMm: [-(columns - 1) / 2, -(rows - 1) / 2],
    mortarMm,
    floorMm: new Float32Array(columns * rows),
    gapMm,
    state,
    action: 0,
    offsetMm: [0, 0],
    coverage: 0.5,
    tileHeightMm: 3,
    tiltDeg: [0, 0],
    loadN: 100,
    ...over,
  };
}

export const plainResult = (over: Partial<BedResult> = {}): BedResult => ({
  coverage: 0.5,
  wetted: 0.5,
  trapped: 0,
  pockets: [],
  largestVoidMm2: 645.16,
  largestVoidAtMm: [0, 0],
  voidsNearEdge: 1,
  corners: [0.5, 0.5, 0.2, 0.5],
  edgeStrip: 0.5,
  bedMm: { mean: 3, min: 2.54, max: 4 },
  tileHeightMm: 3,
  tiltDeg: [0, -0.25],
  loadN: 200,
  squeezedMm3: 16387.064,
  riseInJoint: 0.25,
  history: [],
  massError: 0,
  cells: 9,
  steps: 1,
  ...over,
});
