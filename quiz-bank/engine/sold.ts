import type { UnitSystem } from '../../simulations/units/format.ts';
import { MM_PER_INCH, type Mm } from '../../simulations/units/length.ts';

/**
 * Sizes sold by the inch, and the round size a setter in millimetres knows in their stead (common practice, no
 * published source): a quarter-inch notch is a 6 mm one there, a foot-square tile a 300 mm one.
 */
const STEAD: readonly (readonly [inches: number, mm: Mm])[] = [
  [1 / 32, 1],
  [1 / 16, 2],
  [3 / 32, 2.5],
  [1 / 8, 3],
  [5 / 32, 4],
  [3 / 16, 5],
  [7 / 32, 5.5],
  [1 / 4, 6],
  [5 / 16, 8],
  [3 / 8, 10],
  [7 / 16, 11],
  [1 / 2, 12],
  [9 / 16, 15],
  [5 / 8, 16],
  [3 / 4, 20],
  [1, 25],
  [1.5, 40],
  [2, 50],
  [2.25, 55],
  [4, 100],
  [6, 150],
  [8, 200],
  [10, 250],
  [12, 300],
  [13, 330],
  [16, 400],
  [18, 450],
  [24, 600],
  [36, 900],
  [39, 1000],
  [40, 1000],
  [48, 1200],
  [60, 1500],
  [72, 1800],
  [96, 2400],
  [118, 3000],
];

/** The finest step of the list, in parts of an inch. */
const STEP = 32;
const byStep = new Map(STEAD.map(([inches, mm]) => [inches * STEP, mm]));

/** A size as it is sold where the reader works: an inch size has its metric one in millimetres, anything else stays. */
export function soldAs(units: UnitSystem, size: Mm): Mm {
  if (units === 'imperial') return size;
  const steps = (size / MM_PER_INCH) * STEP;
  const whole = Math.round(steps);
  return Math.abs(steps - whole) < 1e-6 ? (byStep.get(whole) ?? size) : size;
}

/** The same for everything that carries sizes: each field whose name ends in Mm. */
export function allSoldAs<T extends object>(units: UnitSystem, thing: T): T {
  if (units === 'imperial') return thing;
  return Object.fromEntries(
    Object.entries(thing).map(([name, value]: [string, unknown]) => [
      name,
      name.endsWith('Mm') && typeof value === 'number' ? soldAs(units, value) : value,
    ]),
  ) as T;
}
