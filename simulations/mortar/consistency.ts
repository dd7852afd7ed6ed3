/**
 * Yield stress from what a setter can see: how the mix behaves, the two-plate test, the glass test. The number itself is
 * never asked for.
 */
import type { TrowelSetup } from '../bed/types.ts';
import { GRAVITY } from '../numbers/physics.ts';

export type Behaviour = 'slumps' | 'holds-a-ridge' | 'stiff';

/** Yield stress of worked mortar, Pa: usual value and range (from memory, within bounds that standard tests set). */
export const behaviours: Record<Behaviour, { usualPa: number; fromPa: number; toPa: number }> = {
  slumps: { usualPa: 130, fromPa: 50, toPa: 200 },
  'holds-a-ridge': { usualPa: 450, fromPa: 200, toPa: 600 },
  stiff: { usualPa: 900, fromPa: 600, toPa: 1500 },
};

/** End term of a squeezed disc (Ritz upper bound, constant within 0.4 % for radius over gap 1…16). */
const DISC_END = 1.366;

/**
 * Two-plate test: a known volume between two plates under a known weight, left until it stops.
 * τ = F/(πR²[1.366 + 2πR³/(3V)]): the plastic load of a disc of constant volume, with its end term.
 * @param massKg the upper plate included
 * @param volumeMl 1 ml = 1 cm³
 * @param diameterMm of the spread mortar
 * @returns yield stress, Pa
 */
export function twoPlateYieldPa(massKg: number, volumeMl: number, diameterMm: number): number {
  const radius = diameterMm / 2000;
  const volume = volumeMl * 1e-6;
  return (
    (massKg * GRAVITY) /
    (Math.PI * radius * radius * (DISC_END + (2 * Math.PI * radius * radius * radius) / (3 * volume)))
  );
}

/** True where the two-plate formula holds: the disc at least twice as wide in radius as the gap is high. */
export function isTwoPlateValid(volumeMl: number, diameterMm: number): boolean {
  const radius = diameterMm / 2;
  return radius >= (2 * volumeMl * 1000) / (Math.PI * radius * radius);
}

/**
 * Glass test: comb, lay a glass square under a known weight for half a minute, read the coverage through it.
 * @param massKg the glass included
 * @param sideMm of the glass
 * @param coverage share wetted, 0…1; a full glass only says that the mortar is softer than the answer
 * @param pressure the ridge law for this trowel: coverage → mean pressure over yield stress
 * @returns yield stress, Pa
 */
export function glassYieldPa(
  massKg: number,
  sideMm: number,
  coverage: number,
  pressure: (coverage: number, trowel: TrowelSetup) => number,
  trowel: TrowelSetup,
): number {
  return (massKg * GRAVITY) / (sideMm * sideMm * 1e-6) / pressure(coverage, trowel);
}

/** Least yield stress at rest of a mortar of the slip-resistant class, Pa (the slip test's tile on its mortar, derived). */
export const SLIP_RESISTANT_PA = { from: 250, to: 390 };
