import type { BedFrame, TileSetup } from '../bed/types.ts';
import { warpOf } from '../tile/warp.ts';
import { isLaid } from './laid.ts';

/** Height of the tile's back over its mean plane at a place on the tile, mm. */
export type BackHeight = (x: number, y: number) => number;

/** The back of a laid tile as the frame has it, less its mean height: warp, tilt and hollows as they are. */
export function backOf(frame: BedFrame): BackHeight {
  const { columns, rows, cellMm, originMm, gapMm, floorMm, offsetMm, tileHeightMm } = frame;
  return (x, y) => {
    // The edge of a tile lies between the last cell under it and the first beside it: step inwards to a cell that has a gap.
    for (let inwards = 0; inwards < 4; inwards++) {
      const column = Math.round((x + offsetMm[0] - originMm[0]) / cellMm - Math.sign(x) * inwards * 0.5);
      const row = Math.round((y + offsetMm[1] - originMm[1]) / cellMm - Math.sign(y) * inwards * 0.5);
      if (column < 0 || row < 0 || column >= columns || row >= rows) continue;
      const cell = row * columns + column;
      const gap = gapMm[cell]!;
      if (!Number.isNaN(gap)) return gap + floorMm[cell]! - tileHeightMm;
    }
    return 0;
  };
}

const RADIANS = Math.PI / 180;

/**
 * The back of a tile, less its mean height, without the hollows of a relief: in a frame the warp and the tilt as they
 * are. Hollows told by their shape are in the frame's gap, so that the plain back is then worked out anew.
 */
export function plainBack(tile: TileSetup, frame: BedFrame): BackHeight {
  const laid = isLaid(frame);
  if (laid && !tile.relief) return backOf(frame);
  const warp = warpOf(tile, tile.lengthMm, tile.widthMm);
  if (!laid) return warp;
  const [slopeX, slopeY] = frame.tiltDeg.map((degrees) => degrees * RADIANS) as [number, number];
  return (x, y) => warp(x, y) + slopeX * x + slopeY * y;
}
