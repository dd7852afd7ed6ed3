import { edgeHeight, lippageShare, stepAt } from '@sim/tile/lippage.ts';

/** Two rows of bowed planks seen along their long edges; heights drawn many times over. Drawing units. */
export interface WarpDrawing {
  width: number;
  height: number;
  back: string;
  front: string;
  /** Where the step is greatest: a mark between the two edges. */
  step: { x: number; y0: number; y1: number } | null;
  zeroY: number;
}

/** What the two edges do. */
export interface WarpSetup {
  bowMm: number;
  /** Share of a length by which the second row is shifted, 0…0.5. */
  offset: number;
}

const TILE = 230;
const THICK = 20;
const SPAN = 460;
/** Heights are drawn so many units to the millimetre; lengths are not to the same scale, and the page says so. */
export const UNITS_PER_MM = 22;
const MOST_BOW = 2;
const STEPS = 32;
const JOINT = 4;

const n = (value: number): string => String(Math.round(value * 10) / 10);

/** Outline of one tile whose left end is at x; clipped to the drawing by its viewBox. */
function tile(x: number, zero: number, bowMm: number): string {
  const long = TILE - JOINT;
  const top = Array.from({ length: STEPS + 1 }, (_, i) => {
    const place = i / STEPS;
    return [x + JOINT / 2 + place * long, zero - edgeHeight(place, bowMm) * UNITS_PER_MM] as const;
  });
  const foot = [...top].reverse().map(([px, py]) => [px, py + THICK] as const);
  return `M${[...top, ...foot].map(([px, py]) => `${n(px)} ${n(py)}`).join('L')}z`;
}

const row = (shift: number, zero: number, bowMm: number): string =>
  [-1, 0, 1, 2].map((i) => tile(i * TILE + shift, zero, bowMm)).join('');

export function drawWarp({ bowMm, offset }: WarpSetup): WarpDrawing {
  const zeroY = MOST_BOW * UNITS_PER_MM + 12;
  const share = lippageShare(offset);
  const height = zeroY + MOST_BOW * UNITS_PER_MM + THICK + 12;
  // The step is greatest where an end of the second row meets the first.
  const place = offset + 1e-9;
  const x = TILE + place * TILE;
  const high = zeroY - edgeHeight(offset, bowMm) * UNITS_PER_MM;
  return {
    width: SPAN,
    height,
    back: row(0, zeroY, bowMm),
    front: row(offset * TILE, zeroY, bowMm),
    step: share > 0 && bowMm !== 0 && stepAt(place, offset, bowMm) !== 0 ? { x, y0: high, y1: zeroY } : null,
    zeroY,
  };
}
