import type { UnitSystem } from '@sim/units/format.ts';

/** Yield stress of a mix that slumps, one that holds a ridge and a stiff one, Pa. */
export interface MixStresses {
  slumps: number;
  holds: number;
  stiff: number;
}
export type MixKind = keyof MixStresses;

/** Which of the three a stress belongs to; the borders are their geometric means, for stress is felt in times. */
export function kindOfMix(yieldPa: number, mixes: MixStresses): MixKind {
  if (yieldPa < Math.sqrt(mixes.slumps * mixes.holds)) return 'slumps';
  return yieldPa < Math.sqrt(mixes.holds * mixes.stiff) ? 'holds' : 'stiff';
}

const KG_PER_POUND = 0.45359237;
const ML_PER_FLUID_OUNCE = 29.5735295625;

const short = (value: number, digits: number): string => String(Number(value.toFixed(digits)));

/** Two figures that mean something: no such test gives more. */
export const sayPascals = (pa: number): string => `${Number(pa.toPrecision(2))} Pa`;
export const sayMass = (kg: number, units: UnitSystem): string =>
  units === 'imperial' ? `${short(kg / KG_PER_POUND, 1)} lb` : `${short(kg, 2)} kg`;
export const sayVolume = (ml: number, units: UnitSystem): string =>
  units === 'imperial' ? `${short(ml / ML_PER_FLUID_OUNCE, 1)} fl oz (${ml} mL)` : `${ml} mL`;
