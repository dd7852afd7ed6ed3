/** Two backs of one coverage: small voids spread well inside, and one void at a corner. Lengths mm. */
export interface VoidDisc {
  x: number;
  y: number;
  r: number;
}

export interface PulledBack {
  edgeMm: number;
  voids: VoidDisc[];
  /** Largest single void on the tile, mm². */
  largestMm2: number;
  /** Least distance of a void from an edge, mm. */
  toEdgeMm: number;
  coverage: number;
  /** Dots of a ten by ten film that lie on mortar. */
  dots: { x: number; y: number; wet: boolean }[];
  counted: number;
}

/** Eight by eight, so that the film of ten by ten dots reads the share and does not beat with the voids. */
const ROWS = 8;
const DOTS = 10;

const inside = (voids: VoidDisc[], x: number, y: number): boolean =>
  voids.some((one) => (x - one.x) ** 2 + (y - one.y) ** 2 < one.r * one.r);

function readBack(
  edgeMm: number,
  voids: VoidDisc[],
  coverage: number,
  largestMm2: number,
  toEdgeMm: number,
): PulledBack {
  const step = edgeMm / DOTS;
  const dots = Array.from({ length: DOTS * DOTS }, (_, i) => {
    const x = ((i % DOTS) + 0.5) * step;
    const y = (Math.floor(i / DOTS) + 0.5) * step;
    return { x, y, wet: !inside(voids, x, y) };
  });
  return { edgeMm, voids, largestMm2, toEdgeMm, coverage, dots, counted: dots.filter((dot) => dot.wet).length };
}

/** The missing share as a lattice of round voids, none nearer to an edge than the margin. */
export function spreadBack(edgeMm: number, coverage: number, marginMm: number): PulledBack {
  const each = ((1 - coverage) * edgeMm * edgeMm) / (ROWS * ROWS);
  const r = Math.sqrt(each / Math.PI);
  const from = marginMm + r;
  const step = (edgeMm - 2 * from) / (ROWS - 1);
  const voids = Array.from({ length: ROWS * ROWS }, (_, i) => ({
    x: from + (i % ROWS) * step,
    y: from + Math.floor(i / ROWS) * step,
    r,
  }));
  return readBack(edgeMm, voids, coverage, each, marginMm);
}

/** The missing share as a quarter disc at one corner. */
export function cornerBack(edgeMm: number, coverage: number): PulledBack {
  const area = (1 - coverage) * edgeMm * edgeMm;
  return readBack(edgeMm, [{ x: edgeMm, y: edgeMm, r: Math.sqrt((4 * area) / Math.PI) }], coverage, area, 0);
}
