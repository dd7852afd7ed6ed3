import type { BedFrame, TileSetup } from '../bed/types.ts';
import { warpOf } from '../tile/warp.ts';
import { plainBack } from './back-of.ts';
import { isLaid } from './laid.ts';

/** The joint to the tiles next door and how far the row behind is set along, as shown. */
export const NEIGHBOUR_JOINT_MM = 3;
export const NEIGHBOUR_OFFSET = 0.5;

/**
 * The greatest step between the tile's far edge and the row behind it, mm: that row is the same tile, laid level at the
 * same height and set half a tile along. Not a number before the tile is laid.
 */
export function lippageSeen(frame: BedFrame, tile: TileSetup): number {
  if (!isLaid(frame)) return NaN;
  const warp = warpOf(tile, tile.lengthMm, tile.widthMm);
  const back = plainBack(tile, frame);
  const { columns, rows, gapMm, cellMm, originMm } = frame;
  let row = rows - 1;
  while (row > 0 && Number.isNaN(gapMm[row * columns + (columns >> 1)]!)) row--;
  const edge = originMm[1] + row * cellMm - frame.offsetMm[1];
  const half = tile.lengthMm / 2;
  let most = 0;
  for (let column = 0; column < columns; column++) {
    const cell = row * columns + column;
    if (Number.isNaN(gapMm[cell]!)) continue;
    const x = originMm[0] + column * cellMm;
    const beside = x + NEIGHBOUR_OFFSET * tile.lengthMm;
    const place = beside > half ? beside - tile.lengthMm : beside;
    // Both are counted from the tile's own height; hollows in a back make no step at its face.
    most = Math.max(most, Math.abs(back(x - frame.offsetMm[0], edge) - warp(place, -tile.widthMm / 2)));
  }
  return most;
}
