import type { TrowelSetup } from '@sim/bed/types.ts';
import { meanBedMm, pitchMm, ridgeHeightMm } from '@sim/trowel/notch.ts';
import { ridgeOutline, type OutlinePoint } from '@sim/trowel/profile.ts';

/** Blade, ridges and even bed of one notch, as svg paths in drawing units. */
export interface NotchDrawing {
  width: number;
  height: number;
  floorY: number;
  blade: string;
  /** What wear has taken off the teeth. */
  worn: string;
  ridges: string;
  bed: string;
  leastY: number;
  bedX: number;
  /** Dimension lines of the label: width, depth, and the tooth where there is one. */
  marks: Mark[];
}

export interface Mark {
  kind: 'width' | 'depth' | 'tooth';
  path: string;
  x: number;
  y: number;
  anchor: 'middle' | 'end';
  mm: number;
}

/** Every drawing shows this much floor, so that two notches stand at one scale. */
const WINDOW_MM = 78;
const PER_MM = 6;
/** Room for the depth's mark at the left; ridges from there to the right end; then the even bed. */
const LEFT_MM = 10;
const RIDGE_MM = 45;
const PLATE_MM = 4;
const GAP_MM = 5;
const FLOOR_MM = 2;
const TICK = 4;

const n = (value: number): string => String(Math.round(value * 10) / 10);
const at = (x: number, y: number): string => `${n(x * PER_MM)} ${n(y * PER_MM)}`;

const shape = (points: readonly OutlinePoint[], x: number, y: number): string =>
  `M${points.map(([across, up]) => at(x + across, y - up)).join('L')}z`;

/** Middles of the notches that fit between the left edge and the end of the ridges. */
function middles(pitch: number): number[] {
  const count = Math.max(1, Math.floor(RIDGE_MM / pitch));
  return Array.from({ length: count }, (_, i) => LEFT_MM + (i + 0.5) * pitch);
}

const level = (x0: number, x1: number, y: number): string =>
  `M${at(x0, y)}H${n(x1 * PER_MM)}M${n(x0 * PER_MM)} ${n(y * PER_MM - TICK)}v${2 * TICK}M${n(x1 * PER_MM)} ${n(y * PER_MM - TICK)}v${2 * TICK}`;

/** What the label says, where it is on the blade. */
function marksOf(trowel: TrowelSetup, foot: number): Mark[] {
  const pitch = pitchMm(trowel);
  const first = LEFT_MM + pitch / 2;
  const half = trowel.widthMm / 2;
  const below = foot + 1.2;
  const x = (LEFT_MM - 1.5) * PER_MM;
  const top = (foot - trowel.depthMm) * PER_MM;
  const marks: Mark[] = [
    {
      kind: 'width',
      path: level(first - half, first + half, below),
      x: first * PER_MM,
      y: below * PER_MM + 18,
      anchor: 'middle',
      mm: trowel.widthMm,
    },
    {
      kind: 'depth',
      path: `M${n(x)} ${n(top)}V${n(foot * PER_MM)}M${n(x - TICK)} ${n(top)}h${2 * TICK}M${n(x - TICK)} ${n(foot * PER_MM)}h${2 * TICK}`,
      x: x - 7,
      y: (top + foot * PER_MM) / 2 + 5,
      anchor: 'end',
      mm: trowel.depthMm,
    },
  ];
  if (trowel.toothMm > 0)
    marks.push({
      kind: 'tooth',
      path: level(first + half, first + half + trowel.toothMm, below),
      x: (first + half + trowel.toothMm / 2) * PER_MM,
      y: below * PER_MM + 18,
      anchor: 'middle',
      mm: trowel.toothMm,
    });
  return marks;
}

/**
 * Draws a notch to scale: blade above, the ridges it leaves, and the bed they spread to.
 * @param leastMm least bed, mm, marked beside the bed
 * @param tallestMm depth of the deepest notch drawn beside this one, so that both drawings are of one height
 */
export function drawNotch(trowel: TrowelSetup, leastMm: number, tallestMm = trowel.depthMm): NotchDrawing {
  const pitch = pitchMm(trowel);
  const places = middles(pitch);
  const end = LEFT_MM + places.length * pitch;
  const foot = PLATE_MM + tallestMm;
  const sharp = foot - trowel.wearMm;
  const floor = foot + GAP_MM + tallestMm;
  const fresh = ridgeOutline({ ...trowel, angleDeg: 90, wearMm: 0 });
  const ridge = ridgeOutline(trowel);
  const bed = meanBedMm(trowel);
  const teeth = (edge: number): string =>
    `M${at(LEFT_MM, 0)}H${n(end * PER_MM)}V${n(edge * PER_MM)}H${n(LEFT_MM * PER_MM)}z` +
    places.map((x) => shape(clip(fresh, foot - edge), x, foot)).join('');
  const bedX = LEFT_MM + RIDGE_MM + 3;
  return {
    width: WINDOW_MM * PER_MM,
    height: (floor + FLOOR_MM) * PER_MM,
    floorY: floor * PER_MM,
    blade: teeth(sharp),
    worn: trowel.wearMm > 0 ? `M${at(LEFT_MM, foot)}H${n(end * PER_MM)}` : '',
    ridges: places.map((x) => shape(ridge, x, floor)).join(''),
    bed: `M${at(bedX, floor)}V${n((floor - bed) * PER_MM)}H${n(WINDOW_MM * PER_MM)}V${n(floor * PER_MM)}z`,
    leastY: (floor - leastMm) * PER_MM,
    bedX: bedX * PER_MM,
    marks: marksOf(trowel, foot),
  };
}

/** The part of an outline above a height, so that a worn notch opens at the worn edge. */
function clip(points: readonly OutlinePoint[], from: number): OutlinePoint[] {
  if (from <= 0) return [...points];
  const kept: OutlinePoint[] = [];
  points.forEach(([x, y], i) => {
    const [x0, y0] = points[i - 1] ?? [x, y];
    if (y0 < from !== y < from && y !== y0) kept.push([x0 + ((x - x0) * (from - y0)) / (y - y0), from]);
    if (y >= from) kept.push([x, y]);
  });
  return kept;
}

/** Readings of a notch, mm. */
export const readNotch = (trowel: TrowelSetup) => ({
  pitchMm: pitchMm(trowel),
  ridgeMm: ridgeHeightMm(trowel),
  bedMm: meanBedMm(trowel),
});
