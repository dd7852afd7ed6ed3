import { inches } from '../../simulations/units/length.ts';

export interface DrawnTile {
  lengthMm: number;
  widthMm: number;
}

/** A tile by its sides in inches. */
export const tile = (length: number, width: number): DrawnTile => ({
  lengthMm: inches(length),
  widthMm: inches(width),
});

/** Longer one way than the other (length first). */
export const oblong: readonly DrawnTile[] = [
  tile(24, 12),
  tile(36, 6),
  tile(36, 8),
  tile(48, 12),
  tile(48, 8),
  tile(12, 4),
  tile(16, 8),
  tile(18, 12),
  tile(48, 24),
];
export const even: readonly DrawnTile[] = [
  tile(6, 6),
  tile(8, 8),
  tile(12, 12),
  tile(13, 13),
  tile(16, 16),
  tile(18, 18),
  tile(24, 24),
];
export const tiles: readonly DrawnTile[] = [...oblong, ...even];
