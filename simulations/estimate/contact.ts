import { pitchMm, ridgeHeightMm, type Notch } from '../trowel/notch.ts';

/**
 * Contact of a tile that rests on ridges and was not worked in, 0…1 (geometry). A flat-topped ridge touches with its
 * whole width; a V ridge with the strip where its tip is crushed, as wide as the V is that far below its tip.
 * @param crushMm how far the tips have given, mm: half a millimetre under a tile that is only laid down
 */
export function restingContact(notch: Notch, angleDeg: number, crushMm: number): number {
  if (notch.shape !== 'v') return notch.widthMm / pitchMm(notch);
  const height = ridgeHeightMm({ ...notch, angleDeg, wearMm: 0 });
  return ((Math.min(crushMm, height) / height) * notch.widthMm) / pitchMm(notch);
}

/**
 * Contact at the crown of a bowed tile that sits in plane with its neighbours: the bed left by the comb over the gap
 * there, which is the mean gap and half the crown (the bow stands half above and half below its middle plane).
 */
export const crownContact = (bedMm: number, meanGapMm: number, crownMm: number): number =>
  Math.min(1, bedMm / (meanGapMm + crownMm / 2));

/** Most contact there can be where a strip along some edges was left bare. Lengths mm. */
export const bareStripContact = (
  tile: { lengthMm: number; widthMm: number },
  stripMm: number,
  edges: { along: 0 | 1 | 2; across: 0 | 1 | 2 },
): number =>
  ((tile.lengthMm - edges.across * stripMm) * (tile.widthMm - edges.along * stripMm)) / (tile.lengthMm * tile.widthMm);

/** Contact of dabs pressed to a bed (volume over thickness over the tile's area). */
export const dabContact = (count: number, dabMm3: number, bedMm: number, tileMm2: number): number =>
  Math.min(1, (count * dabMm3) / bedMm / tileMm2);

/** Longest way for the air from under a tile to an edge along straight ridges, mm. */
export const airPathMm = (tile: { lengthMm: number; widthMm: number }, directionDeg: 0 | 90): number =>
  (directionDeg === 90 ? tile.widthMm : tile.lengthMm) / 2;
