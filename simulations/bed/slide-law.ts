/**
 * How fast a ridge widens as the tile slides: R = widening over slide, at the load ratio f = load over plastic load.
 * Rate-independent closed forms (a plug between two walls that both slip): across the ridge f = 1 − 1/R² beyond R = 1,
 * which costs nothing; along it f = [R√(1+R²) − asinh R]/R². Oblique directions lie between. Plastic viscosity adds the
 * exact Bingham excess from the table, by the squares of the direction's parts.
 */
import { inverseSinh, lengthOf } from '../numbers/plain.ts';
import { rootOfSmooth } from '../numbers/find-root.ts';
import { acrossTable, alongTable, tableRates, tableSpeeds } from './slide-table.ts';

/** Beyond this the widening is a press, not a slide. */
const MOST_RATE = 5;

const alongIntegral = (x: number): number => x * lengthOf(1, x) - inverseSinh(x);

/** Load ratio without viscosity. @param rate R @param across |cosine| between slide and the ridge's normal */
export function plainLoad(rate: number, across: number): number {
  if (rate <= across) return 0;
  const along = Math.sqrt(Math.max(0, 1 - across * across));
  if (along < 1e-6) return 1 - 1 / (rate * rate);
  const x = rate / along;
  if (x < 1e-3 && across === 0) return (2 / 3) * x;
  return (alongIntegral(x) - alongIntegral(across / along)) / (x * x);
}

/** Place of a value in a rising list, as an index with its fraction. */
function placeIn(list: readonly number[], value: number): number {
  let n = 0;
  while (n < list.length - 2 && value > list[n + 1]!) n += 1;
  const part = (value - list[n]!) / (list[n + 1]! - list[n]!);
  return n + Math.min(1, Math.max(0, part));
}

const rates = [0, ...tableRates];
/** Speeds enter by their root: the loads near R = 1 grow with it. */
const speeds = [0, ...tableSpeeds.map((speed) => Math.sqrt(speed))];

/** Loads at one speed, by `rates`. */
type LoadsAtSpeed = number[];

function loadsAt(rows: number[][], across: number, speed: number): LoadsAtSpeed {
  const s = placeIn(speeds, Math.sqrt(speed));
  const row = Math.min(Math.floor(s), speeds.length - 2);
  return rates.map((rate, column) => {
    const at = (place: number): number =>
      column === 0 ? 0 : place === 0 ? plainLoad(rate, across) : rows[place - 1]![column - 1]!;
    return at(row) + (s - row) * (at(row + 1) - at(row));
  });
}

/** Loads across and along the ridge, at a speed and without viscosity: looked up many times at one speed. */
const still = { across: loadsAt(acrossTable, 1, 0), along: loadsAt(alongTable, 0, 0) };
let lately = { speed: NaN, across: still.across, along: still.along };

function loadsOf(speed: number): typeof lately {
  if (speed !== lately.speed)
    lately = { speed, across: loadsAt(acrossTable, 1, speed), along: loadsAt(alongTable, 0, speed) };
  return lately;
}

/**
 * Load ratio that gives a widening rate.
 * @param rate R, widening over slide, 0…5
 * @param across |cosine| of the angle between the slide and the ridge's normal, 0…1
 * @param speed U* = μU/(hτ), 0 for the rate-independent limit, table to 4
 */
export function slideLoad(rate: number, across: number, speed: number): number {
  const plain = plainLoad(rate, across);
  if (speed <= 0) return plain;
  const square = across * across;
  const loads = loadsOf(speed);
  const place = placeIn(rates, rate);
  const column = Math.min(Math.floor(place), rates.length - 2);
  const at = (list: LoadsAtSpeed): number => list[column]! + (place - column) * (list[column + 1]! - list[column]!);
  return plain + square * (at(loads.across) - at(still.across)) + (1 - square) * (at(loads.along) - at(still.along));
}

/** Widening over slide at a load ratio: the inverse of `slideLoad`, at most 5. */
export function slideRate(load: number, across: number, speed: number): number {
  // Without viscosity a stroke across widens a ridge by its own length under the lightest load.
  if (load <= 0) return speed <= 0 ? across : 0;
  if (slideLoad(MOST_RATE, across, speed) <= load) return MOST_RATE;
  return rootOfSmooth((rate) => slideLoad(rate, across, speed) - load, speed <= 0 ? across : 0, MOST_RATE, 44);
}
