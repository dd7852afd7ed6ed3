import * as z from 'zod/mini';

import { numberFrom } from '../../simulations/input/fields.ts';
import { read } from '../../simulations/input/read.ts';
import { isFlatPatty, yieldFromPatty } from '../../simulations/mortar/two-plate.ts';
import { GRAVITY } from '../../simulations/numbers/physics.ts';

export const plateTestSchema = z.strictObject({
  volumeMl: numberFrom(5, 2000, 'mL'),
  /** On the mortar, the upper plate counted in. */
  massKg: numberFrom(0.05, 50, 'kg'),
  /** Of the patty at rest. */
  diameterMm: numberFrom(20, 600, 'mm'),
});

/** A two-plate test of a class's mortar, as measured. */
export type PlateTest = z.infer<typeof plateTestSchema>;

/** Yield stress that the test gives, Pa; null where the patty is too thick for the formula to hold. */
export function testedYieldPa({ volumeMl, massKg, diameterMm }: PlateTest): number | null {
  const volumeMm3 = volumeMl * 1000;
  return isFlatPatty(diameterMm, volumeMm3)
    ? yieldFromPatty(diameterMm, { volumeMm3, forceN: massKg * GRAVITY })
    : null;
}

/** Reads a kept or carried test; null for anything else. */
export function readPlateTest(input: unknown): PlateTest | null {
  const reading = read(plateTestSchema, input);
  return reading.ok ? reading.value : null;
}
