import type { TileSetup } from '@sim/bed/types.ts';

/** Places of a tile that have a name, for those who do not point at it. */
export type TouchPlace =
  'middle' | 'left' | 'right' | 'near' | 'far' | 'nearLeft' | 'nearRight' | 'farLeft' | 'farRight';

/** Shares of half the length and half the width. */
const OUT = 0.8;
const shares: Record<TouchPlace, readonly [x: number, y: number]> = {
  middle: [0, 0],
  left: [-OUT, 0],
  right: [OUT, 0],
  near: [0, -OUT],
  far: [0, OUT],
  nearLeft: [-OUT, -OUT],
  nearRight: [OUT, -OUT],
  farLeft: [-OUT, OUT],
  farRight: [OUT, OUT],
};

export const TOUCH_PLACES = Object.keys(shares) as TouchPlace[];

/** A named place, mm from the tile's centre. */
export const touchAt = (place: TouchPlace, tile: TileSetup): { atX: number; atY: number } => ({
  atX: Math.round((shares[place][0] * tile.lengthMm) / 2),
  atY: Math.round((shares[place][1] * tile.widthMm) / 2),
});

/** The named place that a touch was made at, or null for one between them. */
export const touchPlace = (at: { atX: number; atY: number }, tile: TileSetup): TouchPlace | null =>
  TOUCH_PLACES.find((place) => {
    const named = touchAt(place, tile);
    return named.atX === at.atX && named.atY === at.atY;
  }) ?? null;
