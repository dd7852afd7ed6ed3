import type { SurfaceSetup } from '../bed/types.ts';
import { readSurface } from './readings.ts';

/** A surface's departure from its mean plane at x, y from its middle, mm. */
export type Warp = (x: number, y: number) => number;

/**
 * Bow along both axes and twist. Bow is the height of the middle over the ends, a parabola (ISO 10545-2 measures the
 * edge's curvature as that departure); twist is the fourth corner's departure from the plane of the other three
 * (ISO 10545-2), a ruled surface. All three have zero mean over the tile. Readings of the surface stand in their stead.
 */
export function warpOf(surface: SurfaceSetup, lengthMm: number, widthMm: number): Warp {
  if (surface.readings) return readSurface(surface.readings, lengthMm, widthMm);
  const { bowLengthMm, bowWidthMm, twistMm = 0 } = surface;
  return (x, y) => {
    const u = (2 * x) / lengthMm;
    const v = (2 * y) / widthMm;
    return bowLengthMm * (1 / 3 - u * u) + bowWidthMm * (1 / 3 - v * v) + (twistMm / 4) * u * v;
  };
}
