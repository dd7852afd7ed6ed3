import type { TileSetup } from './types.ts';

/**
 * Which piece of a sheet lies at a place, counted along the length first from the least x and y; −1 in a joint. A
 * single tile is piece 0 everywhere.
 */
export function pieceAt(tile: TileSetup): (x: number, y: number) => number {
  const { along, across, jointMm } = tile.pieces;
  if (along === 1 && across === 1) return () => 0;
  const stepX = (tile.lengthMm + jointMm) / along;
  const stepY = (tile.widthMm + jointMm) / across;
  return (x, y) => {
    const fromX = x + tile.lengthMm / 2;
    const fromY = y + tile.widthMm / 2;
    const column = Math.floor(fromX / stepX);
    const row = Math.floor(fromY / stepY);
    const inside = fromX - stepX * column < stepX - jointMm && fromY - stepY * row < stepY - jointMm;
    return inside ? row * along + column : -1;
  };
}
