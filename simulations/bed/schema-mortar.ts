import { numberFrom, oneOf, yesOrNo } from '../input/fields.ts';
import { maybe, part } from './schema-part.ts';

/** A mortar, its stiffness as a number or by one of three ways to say or test it. */
export const mortar = part({
  yieldPa: maybe(numberFrom(10, 10_000, 'Pa')),
  behaves: maybe(oneOf(['slumps', 'holds', 'stiff'])),
  twoPlates: maybe(
    part({
      massKg: numberFrom(0.05, 50, 'kg'),
      volumeMl: numberFrom(5, 1000, 'ml'),
      diameterMm: numberFrom(20, 500, 'mm'),
    }),
  ),
  glass: maybe(
    part({
      massKg: numberFrom(0.05, 50, 'kg'),
      sideMm: numberFrom(20, 500, 'mm'),
      coverage: numberFrom(0.05, 0.99),
    }),
  ),
  viscosityPaS: maybe(numberFrom(0, 200, 'Pa·s')),
  ageMin: maybe(numberFrom(0, 240, 'min')),
  skinMin: maybe(numberFrom(1, 240, 'min')),
  weather: maybe(
    part({
      temperatureC: maybe(numberFrom(0, 50, '°C')),
      wind: maybe(oneOf(['still', 'breeze', 'windy'])),
      sun: maybe(yesOrNo()),
      air: maybe(oneOf(['dry', 'middling', 'damp'])),
    }),
  ),
});
