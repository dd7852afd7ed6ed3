import type { TrowelSetup } from '@sim/bed/types.ts';
import { meanBedMm, pitchMm, ridgeHeightMm } from '@sim/trowel/notch.ts';
import { ridgeOutline, type OutlinePoint } from '@sim/trowel/profile.ts';

/** A drawing of a notch: blade above, ridges below it, the even bed to their right. Drawing units, `perMm` a millimetre. */
export interface TrowelPlate {
  width: number;
  height: number;
  perMm: number;
  floorY: number;
  blade: string;
  ridges: string;
  bed: string;
  marks: { path: string; x: number; y: number; anchor: 'start' | 'middle' | 'end'; label: MarkName; mm: number }[];
}
export type MarkName = 'notch' | 'depth' | 'tooth' | 'ridge' | 'bed';

const WIDTH = 440;
const TOP = 34;
const FOOT = 12;
/** Room for the longest label left of the blade, a depth in millimetres. */
const LEFT = 64;
const GAP = 30;
const PITCHES = 7;
const RIDGES = 4;

const n = (value: number): string => String(Math.round(value * 10) / 10);

/** The outline as a closed path with its foot's middle at (x, y), drawn upwards or, for the notch in the blade, too. */
function outlinePath(points: OutlinePoint[], x: number, y: number, perMm: number, up = 1): string {
  const at = ([across, height]: OutlinePoint): string => `${n(x + across * perMm)} ${n(y - height * perMm * up)}`;
  return `M${points.map(at).join('L')}z`;
}

/** A dimension line with end ticks, level or upright. */
const level = (x0: number, x1: number, y: number): string =>
  `M${n(x0)} ${n(y)}H${n(x1)}M${n(x0)} ${n(y - 4)}v8M${n(x1)} ${n(y - 4)}v8`;
const upright = (x: number, y0: number, y1: number): string =>
  `M${n(x)} ${n(y0)}V${n(y1)}M${n(x - 4)} ${n(y0)}h8M${n(x - 4)} ${n(y1)}h8`;

/** Computes the drawing from the notch's own geometry. */
export function trowelPlate(trowel: TrowelSetup): TrowelPlate {
  const pitch = pitchMm(trowel);
  const perMm = Math.min(WIDTH / (PITCHES * pitch), 9);
  const step = pitch * perMm;
  const depth = trowel.depthMm * perMm;
  const ridge = ridgeHeightMm(trowel) * perMm;
  const bed = meanBedMm(trowel) * perMm;
  const left = LEFT;
  const bladeTop = TOP;
  const bladeFoot = bladeTop + depth * 2.1 + 8;
  const floorY = bladeFoot + GAP + ridge;
  const firstX = left + step / 2;
  const notchFull = ridgeOutline({ ...trowel, angleDeg: 90, wearMm: 0 });
  const ridgeShape = ridgeOutline(trowel);
  const middle = (i: number): number => firstX + i * step;
  const bladeEnd = left + 3 * step;
  const bedX = left + RIDGES * step + step * 0.35;
  const plate: TrowelPlate = {
    width: WIDTH,
    height: floorY + FOOT,
    perMm,
    floorY,
    blade:
      `M${n(left)} ${n(bladeTop)}H${n(bladeEnd)}V${n(bladeFoot)}H${n(left)}z` +
      [0, 1, 2].map((i) => outlinePath(notchFull, middle(i), bladeFoot, perMm)).join(''),
    ridges: Array.from({ length: RIDGES }, (_, i) => outlinePath(ridgeShape, middle(i), floorY, perMm)).join(''),
    bed: `M${n(bedX)} ${n(floorY)}H${n(WIDTH - 4)}v${n(-bed)}H${n(bedX)}z`,
    marks: [],
  };
  const half = (trowel.widthMm * perMm) / 2;
  plate.marks.push(
    {
      path: level(middle(1) - half, middle(1) + half, bladeFoot + 9),
      x: middle(1),
      y: bladeFoot + 23,
      anchor: 'middle',
      label: 'notch',
      mm: trowel.widthMm,
    },
    {
      path: upright(left - 10, bladeFoot - depth, bladeFoot),
      x: left - 14,
      y: bladeFoot - depth / 2 + 4,
      anchor: 'end',
      label: 'depth',
      mm: trowel.depthMm,
    },
    {
      path: upright(left - 10, floorY - ridge, floorY),
      x: left - 14,
      y: floorY - ridge / 2 + 4,
      anchor: 'end',
      label: 'ridge',
      mm: ridgeHeightMm(trowel),
    },
    {
      path: upright(bedX + 14, floorY - bed, floorY),
      x: bedX + 12,
      y: floorY - bed - 6,
      anchor: 'start',
      label: 'bed',
      mm: meanBedMm(trowel),
    },
  );
  if (trowel.toothMm > 0)
    plate.marks.push({
      path: level(middle(1) + half, middle(2) - half, bladeTop - 8),
      x: (middle(1) + middle(2)) / 2,
      y: bladeTop - 14,
      anchor: 'middle',
      label: 'tooth',
      mm: trowel.toothMm,
    });
  return plate;
}
