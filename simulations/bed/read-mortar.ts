import type { output } from 'zod/mini';

import type { Fault, Reading } from '../input/fault.ts';
import { glassYieldPa } from '../mortar/glass.ts';
import { SKIN_MIN } from '../mortar/skin.ts';
import { isFlatPatty, leastDiameter, yieldFromPatty } from '../mortar/two-plate.ts';
import { openMinutes, type Weather, type WeatherShares } from '../mortar/weather.ts';
import { GRAVITY } from '../numbers/physics.ts';
import { pressureForTrowel } from './ridge-law.ts';
import type { mortar as mortarSchema } from './schema-mortar.ts';
import type { MortarSetup, TrowelSetup } from './types.ts';
import { fillIn } from '../input/fill-in.ts';

/** Figures of the trade behind the words, as the rules hold them. */
export interface MortarRules {
  /** Yield stress of a mix that slumps, one that holds a ridge, a stiff one, Pa. */
  stiffnessPa: Record<'slumps' | 'holds' | 'stiff', number>;
  weather: WeatherShares;
  /** Temperature at which open times hold, °C. */
  referenceC: number;
}

type GivenMortar = output<typeof mortarSchema>;

/** What a mortar comes to, and what was taken from words or from a test to get there. */
export interface MortarReading {
  mortar: Partial<MortarSetup>;
  assumed: Record<string, unknown>;
}

/** Range that yield stress is read in, Pa; a test that comes to more or less was not of tile mortar. */
const LEAST_PA = 10;
const MOST_PA = 10_000;

const fault = (path: string, problem: string, accepted: string): Fault => ({
  path: `mortar.${path}`,
  problem,
  accepted,
});

const NO_WORDS = 'is a word that needs the rules';

/** Yield stress from one of the ways to tell it; nothing when none was used. */
function yieldOf(given: GivenMortar, trowel: TrowelSetup, rules: MortarRules | undefined): number | Fault | undefined {
  const { behaves, twoPlates, glass } = given;
  if (behaves)
    return rules
      ? rules.stiffnessPa[behaves]
      : fault('behaves', NO_WORDS, 'give mortar.yieldPa or a test of the mortar');
  if (twoPlates) {
    const plates = { volumeMm3: twoPlates.volumeMl * 1000, forceN: twoPlates.massKg * GRAVITY };
    if (!isFlatPatty(twoPlates.diameterMm, plates.volumeMm3))
      return fault(
        'twoPlates.diameterMm',
        `is ${twoPlates.diameterMm}, a patty too thick for this test`,
        `give at least ${Math.ceil(leastDiameter(plates.volumeMm3))} mm, from a heavier plate`,
      );
    return yieldFromPatty(twoPlates.diameterMm, plates);
  }
  return glass && glassYieldPa(glass, pressureForTrowel(glass.coverage, trowel));
}

/** Minutes of skin in the weather told. */
function skinOf(given: GivenMortar, rules: MortarRules, assumed: Record<string, unknown>): number {
  const usual: Required<Weather> = { temperatureC: rules.referenceC, wind: 'still', sun: false, air: 'middling' };
  const weather = fillIn(given.weather ?? {}, usual, 'mortar.weather', assumed);
  return openMinutes(given.skinMin ?? SKIN_MIN, rules.referenceC, weather, rules.weather);
}

/**
 * A mortar as a person told it, in the solver's own numbers: stiffness as a number, in a word, or by the two-plate or
 * the glass test; skin in the weather of the day. What was worked out is listed with what was assumed.
 * @param trowel the one the bed (and a glass test) is combed with
 */
export function readMortar(
  given: GivenMortar,
  trowel: TrowelSetup,
  rules: MortarRules | undefined,
): Reading<MortarReading> {
  const { behaves, twoPlates, glass, weather, ...plain } = given;
  const mortar: Partial<MortarSetup> = {};
  for (const [name, value] of Object.entries(plain)) if (value !== undefined) Object.assign(mortar, { [name]: value });
  const assumed: Record<string, unknown> = {};
  const ways = Object.entries({ yieldPa: given.yieldPa, behaves, twoPlates, glass }).filter(
    ([, told]) => told !== undefined,
  );
  if (ways.length > 1)
    return {
      ok: false,
      faults: ways
        .slice(1)
        .map(([name]) =>
          fault(name, `stands beside mortar.${ways[0]![0]}`, 'tell how stiff the mortar is in one way only'),
        ),
    };
  const found = yieldOf(given, trowel, rules);
  if (typeof found === 'object') return { ok: false, faults: [found] };
  if (found !== undefined) {
    if (!(found >= LEAST_PA && found <= MOST_PA))
      return {
        ok: false,
        faults: [
          fault(
            twoPlates ? 'twoPlates' : 'glass',
            `comes to ${Number(found.toPrecision(3))} Pa`,
            `measure again; tile mortar lies from ${LEAST_PA} to ${MOST_PA} Pa`,
          ),
        ],
      };
    mortar.yieldPa = found;
    assumed['mortar.yieldPa'] = found;
  }
  if (weather) {
    if (!rules) return { ok: false, faults: [fault('weather', NO_WORDS, 'give mortar.skinMin')] };
    mortar.skinMin = skinOf(given, rules, assumed);
    assumed['mortar.skinMin'] = mortar.skinMin;
  }
  return { ok: true, value: { mortar, assumed } };
}
