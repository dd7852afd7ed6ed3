import { readSetup } from '@sim/bed/read-setup.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import type { Reading } from '@sim/input/fault.ts';
import type { Weather } from '@sim/mortar/weather.ts';
import { mortarWords } from '@sim/rules/mortar-words.ts';

/** A lump pressed flat between two plates. */
export interface PlatesTold {
  massKg: number;
  volumeMl: number;
  diameterMm: number;
}

/** A sheet of glass pressed on the combed bed. */
export interface GlassTold {
  massKg: number;
  sideMm: number;
  /** Share of the glass that is wet, 0…1. */
  coverage: number;
}

/** What was told of a mortar in place of the model's own numbers; at most one of the two tests. */
export interface Told {
  twoPlates?: PlatesTold;
  glass?: GlassTold;
  weather?: Required<Weather>;
}

/** Where the fields of a test begin, and a day in a heated room. */
export const usualPlates: PlatesTold = { massKg: 2, volumeMl: 50, diameterMm: 96 };
export const usualGlass: GlassTold = { massKg: 5, sideMm: 200, coverage: 0.5 };
export const usualWeather = (): Required<Weather> => ({
  temperatureC: Math.round(mortarWords().referenceC),
  wind: 'still',
  sun: false,
  air: 'middling',
});

/**
 * A set-up with its mortar as it was told.
 * @returns the set-up in the model's numbers, or why a test or a word cannot be meant
 */
export function mortarTold(setup: BedSetup, told: Told): Reading<BedSetup> {
  const { yieldPa, skinMin, ...mortar } = setup.mortar;
  const { twoPlates, glass, weather } = told;
  const stiffness = twoPlates ? { twoPlates } : glass ? { glass } : { yieldPa };
  const reading = readSetup(
    { ...setup, mortar: { ...mortar, ...stiffness, ...(weather ? { weather } : { skinMin }) } },
    mortarWords(),
  );
  return reading.ok ? { ok: true, value: reading.value.setup } : reading;
}

const near = (a: number | undefined, b: number | undefined): boolean => Math.abs((a ?? 0) - (b ?? 0)) < 1e-6;

/** What was told and still holds: another control may have changed the number since. */
export function stillTold(setup: BedSetup, told: Told): Told {
  if (!told.twoPlates && !told.glass && !told.weather) return {};
  const reading = mortarTold(setup, told);
  if (!reading.ok) return {};
  const { yieldPa, skinMin } = reading.value.mortar;
  const { weather, ...test } = told;
  return {
    ...(near(yieldPa, setup.mortar.yieldPa) ? test : {}),
    ...(weather && near(skinMin, setup.mortar.skinMin) ? { weather } : {}),
  };
}
