import { pattyMm } from '@sim/mortar/two-plate.ts';

/** Section through two plates with the patty between them, and the patty from above, at one scale; drawing units. */
export interface TwoPlateDrawing {
  width: number;
  height: number;
  patty: string;
  plates: string;
  weight: string;
  measure: string;
  measureY: number;
  /** Seen from above. */
  above: { x: number; y: number; r: number; plate: string };
}

const PER_MM = 2;
const PLATE_MM = 170;
const GLASS_MM = 6;
const MARGIN_MM = 6;
/** The weight is drawn as a block of iron this wide; its height follows from its mass. */
const BLOCK_MM = 100;
const IRON_G_MM3 = 0.0078;

const n = (value: number): string => String(Math.round(value * PER_MM * 10) / 10);
const box = (x: number, y: number, w: number, h: number): string => `M${n(x)} ${n(y)}h${n(w)}v${n(h)}h${n(-w)}z`;

/** @param massKg mass of what lies on the mortar, drawn as a square block of iron */
export function drawTwoPlates(diameterMm: number, volumeMm3: number, massKg: number): TwoPlateDrawing {
  const gap = pattyMm(diameterMm, volumeMm3);
  const block = (massKg * 1000) / IRON_G_MM3 / (BLOCK_MM * BLOCK_MM);
  const middle = MARGIN_MM + PLATE_MM / 2;
  const top = 92;
  const upper = top - GLASS_MM - gap;
  const measureY = top + GLASS_MM + 5;
  const centreY = measureY + 14 + PLATE_MM / 2;
  const half = diameterMm / 2;
  return {
    width: (PLATE_MM + 2 * MARGIN_MM) * PER_MM,
    height: (centreY + PLATE_MM / 2 + MARGIN_MM) * PER_MM,
    patty: box(middle - half, top - gap, diameterMm, gap),
    plates: box(MARGIN_MM, top, PLATE_MM, GLASS_MM) + box(MARGIN_MM, upper, PLATE_MM, GLASS_MM),
    weight: box(middle - BLOCK_MM / 2, upper - block, BLOCK_MM, block),
    measure:
      `M${n(middle - half)} ${n(measureY)}h${n(diameterMm)}` +
      `M${n(middle - half)} ${n(measureY - 2)}v${n(4)}M${n(middle + half)} ${n(measureY - 2)}v${n(4)}`,
    measureY: measureY * PER_MM,
    above: {
      x: middle * PER_MM,
      y: centreY * PER_MM,
      r: half * PER_MM,
      plate: box(MARGIN_MM, centreY - PLATE_MM / 2, PLATE_MM, PLATE_MM),
    },
  };
}
