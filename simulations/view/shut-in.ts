import type { AirPocket, TileSetup } from '../bed/types.ts';
import { formatLength, type UnitSystem } from '../units/format.ts';
import { formatPressure, formatSmallArea } from '../units/mechanics.ts';

/** Pockets that pictures number and tables list: the largest; a swirled bed may hold hundreds of small ones. */
export const MOST_COLUMNS = 12;

/** One pocket of shut-in air in words. */
export interface PocketRow {
  number: number;
  /** From the tile's left and its near edge to the pocket's middle. */
  fromLeft: string;
  fromNear: string;
  area: string;
  pressure: string;
}

/** The largest pockets, each with its place, its area and its pressure over the room's. */
export const pocketRows = (pockets: readonly AirPocket[], tile: TileSetup, units: UnitSystem): PocketRow[] =>
  pockets.slice(0, MOST_COLUMNS).map(({ xMm, yMm, areaMm2, gaugePa }, n) => ({
    number: n + 1,
    fromLeft: formatLength(xMm + tile.lengthMm / 2, units, 4),
    fromNear: formatLength(yMm + tile.widthMm / 2, units, 4),
    area: formatSmallArea(areaMm2, units),
    pressure: formatPressure(gaugePa, units),
  }));
