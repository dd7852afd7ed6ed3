import type { TileSetup } from '@sim/bed/types.ts';
import { inches } from '@sim/units/length.ts';
import type { bench } from '@site/messages/en/bench.ts';

export interface TileSize {
  id: Exclude<keyof typeof bench.controls.sizes, 'own'>;
  tile: Pick<TileSetup, 'lengthMm' | 'widthMm' | 'thicknessMm' | 'pieces'>;
}

const whole = { along: 1, across: 1, jointMm: 3 };
const size = (
  id: TileSize['id'],
  longIn: number,
  wideIn: number,
  thicknessMm: number,
  pieces: TileSetup['pieces'] = whole,
): TileSize => ({
  id,
  tile: { lengthMm: Math.round(inches(longIn)), widthMm: Math.round(inches(wideIn)), thicknessMm, pieces },
});

/** Tiles one meets on a job (common practice, no published source); nominal sizes, to the millimetre. */
export const tileSizes: readonly TileSize[] = [
  size('mosaic', 12, 12, 6, { along: 6, across: 6, jointMm: 3 }),
  size('s6', 6, 6, 7),
  size('s12', 12, 12, 8),
  size('s1224', 24, 12, 9),
  size('s24', 24, 24, 10),
  size('plank', 48, 8, 10),
];

export const sameSize = ({ tile }: TileSize, other: TileSetup): boolean =>
  tile.lengthMm === other.lengthMm &&
  tile.widthMm === other.widthMm &&
  tile.pieces.along === other.pieces.along &&
  tile.pieces.across === other.pieces.across;
