import { smoothCurve, smoothSurface } from './smooth.ts';
import type { SurfaceReadings } from '../bed/types.ts';

/** Height at u, v from −1 to 1 over the surface, mm. */
type Heights = (u: number, v: number) => number;
type Line = (place: number) => number;

const flat: Line = () => 0;

/**
 * One line of readings as a curve that is nought at the middle. Its slope is taken off first: a straightedge lies on
 * two ends and knows nothing of the slope between them.
 */
function lineThrough(readings: readonly number[] | undefined): Line {
  if (!readings) return flat;
  const curve = smoothCurve(readings);
  const rise = (readings.at(-1)! - readings[0]!) / 2;
  const middle = curve(0);
  return (place) => curve(place) - middle - rise * place;
}

/**
 * A surface through lines along both middles and both diagonals. Middles add up; what the diagonals show beyond that
 * sum is spread between them by the angle, so that a parabolic bow and a twist come out exactly.
 */
function throughLines({ alongMm, acrossMm, diagonalsMm }: SurfaceReadings): Heights {
  const [rising, falling] = [lineThrough(diagonalsMm?.[0]), lineThrough(diagonalsMm?.[1])];
  const onlyDiagonals = !alongMm && !acrossMm;
  // With no other line the bow is shared evenly between both axes.
  const half: Line = (s) => (rising(s) + rising(-s) + falling(s) + falling(-s)) / 8;
  const along = onlyDiagonals ? half : lineThrough(alongMm);
  const across = onlyDiagonals ? half : lineThrough(acrossMm);
  if (!diagonalsMm) return (u, v) => along(u) + across(v);
  const beyondRising: Line = (s) => rising(s) - along(s) - across(s);
  const beyondFalling: Line = (s) => falling(s) - along(s) - across(-s);
  return (u, v) => {
    const square = u * u + v * v;
    if (square === 0) return 0;
    const turn = (2 * u * v) / square;
    const s = Math.sqrt(square / 2) * (u < 0 ? -1 : 1);
    const even = 0.5 * (beyondRising(s) + beyondFalling(s));
    const odd = 0.5 * (beyondRising(s) - beyondFalling(s));
    return along(u) + across(v) + turn * turn * even + turn * odd;
  };
}

const PARTS = 16;
/** Two points a part at which a cubic's integral is exact (Gauss). */
const gauss: readonly number[] = Array.from({ length: 2 * PARTS }, (_, n) => {
  const middle = (2 * Math.floor(n / 2) + 1) / PARTS - 1;
  return middle + (n % 2 === 0 ? -1 : 1) / (PARTS * Math.sqrt(3));
});

/** The surface over its own mean plane. */
function overMeanPlane(heights: Heights): Heights {
  let mean = 0;
  let slopeU = 0;
  let slopeV = 0;
  for (const v of gauss)
    for (const u of gauss) {
      const z = heights(u, v);
      mean += z;
      slopeU += z * u;
      slopeV += z * v;
    }
  const count = gauss.length * gauss.length;
  mean /= count;
  slopeU *= 3 / count;
  slopeV *= 3 / count;
  return (u, v) => heights(u, v) - mean - slopeU * u - slopeV * v;
}

/**
 * A surface through readings, over its mean plane.
 * @returns height in mm at x, y from the middle
 */
export function readSurface(
  readings: SurfaceReadings,
  lengthMm: number,
  widthMm: number,
): (x: number, y: number) => number {
  const heights = overMeanPlane(readings.gridMm ? smoothSurface(readings.gridMm) : throughLines(readings));
  return (x, y) => heights((2 * x) / lengthMm, (2 * y) / widthMm);
}
