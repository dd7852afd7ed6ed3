import type { WeatherShares } from '../mortar/weather.ts';
import { valueOf } from './rulebook.ts';

/** What stands behind the words for mortar and weather: figures of the rules, for readers that may not import them. */
export const mortarWords = (): {
  stiffnessPa: Record<'slumps' | 'holds' | 'stiff', number>;
  weather: WeatherShares;
  referenceC: number;
} => ({
  stiffnessPa: {
    slumps: valueOf('mortar.stiffness', 'slumps'),
    holds: valueOf('mortar.stiffness', 'holds'),
    stiff: valueOf('mortar.stiffness', 'stiff'),
  },
  weather: {
    stepK: valueOf('time.weather', 'step'),
    warmer: valueOf('time.weather', 'warmer'),
    breeze: valueOf('time.weather', 'breeze'),
    wind: valueOf('time.weather', 'wind'),
    sun: valueOf('time.weather', 'sun'),
    dry: valueOf('time.damp', 'dry'),
    damp: valueOf('time.damp', 'damp'),
  },
  referenceC: valueOf('time.reference', 'temperature'),
});
