import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

import type { UnitSystem } from '../../simulations/units/format.ts';
import { inches, type Mm, squareFeet, toSquareFeet } from '../../simulations/units/length.ts';
import { allSoldAs, soldAs } from './sold.ts';

/** Chance for one question, from a name: the same name gives the same draws on any machine. */
export interface Draw {
  /** A whole number, both ends included. */
  whole(least: number, most: number): number;
  /** One of a list. */
  pick<T>(list: readonly T[]): T;
  /** Some of a list, each at most once, in the order drawn. */
  some<T>(list: readonly T[], count: number): T[];
  /** The whole list in a drawn order. */
  shuffled<T>(list: readonly T[]): T[];
  /** A value on a ladder of equal steps, both ends included. */
  step(least: number, most: number, by: number): number;
  /** True with the given chance, 0…1. */
  chance(share: number): boolean;
}

/** FNV-1a over the name's characters; two names a letter apart give unrelated streams after the generator's mixing. */
function hash(name: string): number {
  let value = 0x811c9dc5;
  for (let at = 0; at < name.length; at++) value = Math.imul(value ^ name.charCodeAt(at), 0x01000193);
  value = Math.imul(value ^ (value >>> 16), 0x7feb352d);
  value = Math.imul(value ^ (value >>> 15), 0x846ca68b);
  return value ^ (value >>> 16);
}

const WARM_UP = 32;

/**
 * Opens the stream of a name. Each use of chance has its own name, so that what a question draws for its job can't put
 * its key in the same place every time.
 */
export function drawFrom(...name: (string | number)[]): Draw {
  const stream = xoroshiro128plus(hash(name.join('|')));
  // The generator's state starts as its seed and that seed's complement, so its first outputs are much alike whatever
  // the seed; they are thrown away.
  for (let skipped = 0; skipped < WARM_UP; skipped++) stream.next();
  const whole = (least: number, most: number): number => uniformInt(stream, least, most);
  const pick = <T>(list: readonly T[]): T => {
    if (list.length === 0) throw new Error('A draw from an empty list.');
    return list[whole(0, list.length - 1)] as T;
  };
  const shuffled = <T>(list: readonly T[]): T[] => {
    const out = [...list];
    for (let last = out.length - 1; last > 0; last--) {
      const other = whole(0, last);
      [out[last], out[other]] = [out[other] as T, out[last] as T];
    }
    return out;
  };
  return {
    whole,
    pick,
    shuffled,
    some: (list, count) => shuffled(list).slice(0, count),
    // Rounded so that a ladder of 0.1 does not leave 0.30000000000000004 on the page.
    step: (least, most, by) => Math.round((least + by * whole(0, Math.round((most - least) / by))) * 1e6) / 1e6,
    chance: (share) => whole(0, 999_999) < share * 1e6,
  };
}

/** Chance for a job, whose tile, tools and joints are of the sizes sold where the reader works. */
export interface JobDraw extends Draw {
  units: UnitSystem;
  /** One of a list of sizes given in inches, mm. */
  size(list: readonly number[]): Mm;
  /** One of a list of things that carry sizes (tiles, trowels). */
  stock<T extends object>(list: readonly T[]): T;
  /** A floor of the given size, in round figures of the reader's unit, m². */
  floor(areaM2: number): number;
  /** The whole list in the reader's sizes. */
  sold<T extends object>(list: readonly T[]): T[];
}

/** @param units whose sizes are drawn: by the inch as sold, or the round metric ones in their stead */
export const jobDraw = (draw: Draw, units: UnitSystem): JobDraw => ({
  ...draw,
  units,
  size: (list) => soldAs(units, inches(draw.pick(list))),
  stock: (list) => allSoldAs(units, draw.pick(list)),
  floor: (areaM2) => (units === 'imperial' ? squareFeet(Math.round(toSquareFeet(areaM2) / 10) * 10) : areaM2),
  sold: (list) => list.map((one) => allSoldAs(units, one)),
});
