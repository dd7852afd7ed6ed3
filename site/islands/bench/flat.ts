import type { SurfaceSetup, TileSetup } from '@sim/bed/types.ts';

/** Whether a surface leaves its plane at all. */
export const isWarped = ({ bowLengthMm, bowWidthMm, twistMm = 0, readings }: SurfaceSetup): boolean =>
  bowLengthMm !== 0 || bowWidthMm !== 0 || twistMm !== 0 || readings !== undefined;

/** The same surface without readings of it: bow and twist count again. */
export function withoutReadings<T extends SurfaceSetup>(surface: T): T {
  const rest = { ...surface };
  delete rest.readings;
  return rest;
}

/** The same surface, flat. */
export const flatSurface = <T extends SurfaceSetup>(surface: T): T => ({
  ...withoutReadings(surface),
  bowLengthMm: 0,
  bowWidthMm: 0,
  twistMm: 0,
});

/** The same tile with a relief known by its mean depth alone. */
export function meanRelief(tile: TileSetup, reliefMm: number): TileSetup {
  const rest = { ...tile, reliefMm };
  delete rest.relief;
  return rest;
}
