import type { ReliefSetup, TileSetup } from '../bed/types.ts';
import { direction, lengthOf } from '../numbers/plain.ts';

/** Depth of the back under its high parts at a place, mm, 0 on them. */
export type Recess = (x: number, y: number) => number;

/**
 * Mean depth of a relief, mm: what mortar or a coat must fill. Ribs leave 1 − s of the back low (s = width of a rib
 * over the pitch), ribs both ways (1 − s)², round dots 1 − πs²/4 (plain geometry).
 */
export function meanReliefMm({ shape, depthMm, raisedShare: s }: ReliefSetup): number {
  switch (shape) {
    case 'ribs':
      return depthMm * (1 - s);
    case 'grid':
      return depthMm * (1 - s) * (1 - s);
    case 'dots':
      return depthMm * (1 - (Math.PI * s * s) / 4);
  }
}

/** Length of [from, to] that lies on ribs `wide` across at every `pitch`, the first about 0. */
function onRibs(from: number, to: number, pitch: number, wide: number): number {
  const upTo = (x: number): number => {
    const whole = Math.floor(x / pitch);
    return whole * wide + Math.min(wide, x - whole * pitch);
  };
  return upTo(to + wide / 2) - upTo(from + wide / 2);
}

/**
 * The relief of a back as a height field, averaged over a window so that a wall through a cell counts by its place.
 * @param windowMm side of the cell
 */
export function reliefField(relief: ReliefSetup, windowMm: number): Recess {
  const { shape, pitchMm: pitch, depthMm, raisedShare } = relief;
  const [c, s] = direction(relief.directionDeg);
  const wide = raisedShare * pitch;
  const low = (u: number): number => 1 - onRibs(u - windowMm / 2, u + windowMm / 2, pitch, wide) / windowMm;
  switch (shape) {
    case 'ribs':
      return (x, y) => depthMm * low(y * c - x * s);
    case 'grid':
      return (x, y) => depthMm * low(y * c - x * s) * low(x * c + y * s);
    case 'dots':
      return (x, y) => {
        const u = x * c + y * s;
        const v = y * c - x * s;
        const fromDot = lengthOf(u - pitch * Math.round(u / pitch), v - pitch * Math.round(v / pitch));
        return depthMm * Math.min(1, Math.max(0, (fromDot - wide / 2) / windowMm + 0.5));
      };
  }
}

/** The back and the coat on it at a place. */
export interface Back {
  /** Depth of the back under its high parts, mm. */
  recess: Recess;
  /** Mortar on the back, mm. */
  coat: Recess;
}

/**
 * A back with a coat of mortar. A coat rubbed in with the flat side fills every hollow alike from its bottom up; what
 * is more than fills them lies over all (model). A relief known by its mean depth alone counts as a coat wanting.
 */
export function backOf(tile: Pick<TileSetup, 'relief' | 'reliefMm'>, butterMm: number, windowMm: number): Back {
  if (!tile.relief) {
    const coat = butterMm - tile.reliefMm;
    return { recess: () => 0, coat: () => coat };
  }
  const recess = reliefField(tile.relief, windowMm);
  const mean = meanReliefMm(tile.relief);
  const filled = mean > 0 ? Math.min(1, butterMm / mean) : 0;
  const over = Math.max(0, butterMm - mean);
  return { recess, coat: (x, y) => filled * recess(x, y) + over };
}

/** Mean depth of a back's hollows, mm, however the relief was given. */
export const meanDepthMm = (tile: Pick<TileSetup, 'relief' | 'reliefMm'>): number =>
  tile.relief ? meanReliefMm(tile.relief) : tile.reliefMm;
