import { slideLoad } from '../../bed/slide-law.ts';

/** A function on [0, most], looked up by straight lines between evenly spaced values: asked for a million times. */
export type Lookup = Float64Array;

/** Values of a function at `steps` + 1 even places of [0, most]. */
export const lookup = (f: (x: number) => number, most: number, steps: number): Lookup =>
  Float64Array.from({ length: steps + 1 }, (_, n) => f((n * most) / steps));

/** The looked-up value; beyond the ends the end's value. */
export function lookedUp(values: Lookup, most: number, x: number): number {
  const steps = values.length - 1;
  const place = (x / most) * steps;
  if (place <= 0) return values[0] ?? 0;
  if (place >= steps) return values[steps] ?? 0;
  const n = Math.floor(place);
  const from = values[n] ?? 0;
  return from + (place - n) * ((values[n + 1] ?? 0) - from);
}

/** Ridges widen at most so many times the slide; beyond it is a press. */
export const MOST_RATE = 5;
const RATES = 40;
/** Speeds enter by their root, as the law's own table does. */
const MOST_ROOT = 2;
const SPEEDS = 40;

let rows: Lookup[] | null = null;
const allRows = (): Lookup[] =>
  (rows ??= Array.from({ length: SPEEDS + 1 }, (_, n) =>
    lookup((rate) => slideLoad(rate, 1, ((n * MOST_ROOT) / SPEEDS) ** 2), MOST_RATE, RATES),
  ));

/** Load ratio by widening rate across the ridges, for one speed U* = μU/(hτ). */
export function slideLoads(speed: number): Lookup {
  const place = Math.min(SPEEDS, (Math.sqrt(speed) / MOST_ROOT) * SPEEDS);
  const n = Math.min(SPEEDS - 1, Math.floor(place));
  const [low, high] = [allRows()[n], allRows()[n + 1]];
  if (!low || !high) throw new RangeError(`No slide law for a speed of ${speed}.`);
  return low.map((value, k) => value + (place - n) * ((high[k] ?? value) - value));
}
