import { formatArea, formatGap, formatLength, formatShare, type UnitSystem } from '../units/format.ts';
import { MM_PER_INCH, toSquareFeet } from '../units/length.ts';
import { formatSmallArea } from '../units/mechanics.ts';
import { plainNumber } from '../units/plain-number.ts';
import { formatBar, formatSpan } from '../units/span.ts';
import type { RuleRow, RuleUnit, RuleValue } from './rule.ts';

const KG_PER_POUND = 0.45359237;
const KG_M2_PER_LB_FT2 = 4.88243;
const PA_PER_PSI = 6894.757;
const L_PER_GALLON = 3.785412;
const M2_PER_100_FT2 = 9.290304;
const EIGHTH_IN_MM = MM_PER_INCH / 8;

const inUnits: Partial<Record<RuleUnit, (value: number, system: UnitSystem) => string>> = {
  share: (value) => (value * 100 < 3 ? `${plainNumber(value * 100)} %` : formatShare(value)),
  'mm²': formatSmallArea,
  'm²': formatArea,
  L: (value, system) =>
    system === 'imperial' ? `${plainNumber((value / L_PER_GALLON) * 4)} US qt` : `${plainNumber(value)} L`,
  'L/m²': (value, system) =>
    system === 'imperial'
      ? `${plainNumber((value * M2_PER_100_FT2) / L_PER_GALLON)} US gal/100 ft²`
      : `${plainNumber(value)} L/m²`,
  'm² per bag': (value, system) =>
    system === 'imperial' ? `${Math.round(toSquareFeet(value))} ft²` : `${plainNumber(Number(value.toFixed(1)))} m²`,
  '°': (value) => `${plainNumber(value)}°`,
  kg: (value, system) =>
    system === 'imperial' ? `${Math.round(value / KG_PER_POUND)} lb` : `${plainNumber(value)} kg`,
  'kg/m²': (value, system) =>
    system === 'imperial' ? `${plainNumber(value / KG_M2_PER_LB_FT2)} lb/ft²` : `${plainNumber(value)} kg/m²`,
  'kg/m² per mm': (value, system) =>
    system === 'imperial'
      ? `${plainNumber((value * EIGHTH_IN_MM) / KG_M2_PER_LB_FT2)} lb/ft² per 1/8 in`
      : `${plainNumber(value)} kg/m² per mm`,
  'kg/m³': (value, system) =>
    system === 'imperial' ? `${Math.round(value / 16.01846)} lb/ft³` : `${plainNumber(value)} kg/m³`,
  'L/kg': (value, system) =>
    system === 'imperial'
      ? `${plainNumber((value / L_PER_GALLON) * 4 * KG_PER_POUND)} US qt/lb`
      : `${plainNumber(value)} L/kg`,
  '°C': (value, system) => (system === 'imperial' ? `${Math.round(value * 1.8 + 32)} °F` : `${plainNumber(value)} °C`),
  K: (value, system) => (system === 'imperial' ? `${plainNumber(value * 1.8)} °F` : `${plainNumber(value)} °C`),
  'N/mm²': (value, system) =>
    system === 'imperial' ? `${Math.round((value * 1e6) / PA_PER_PSI / 10) * 10} psi` : `${plainNumber(value)} N/mm²`,
  N: (value, system) => (system === 'imperial' ? `${Math.round(value / 4.448222)} lb` : `${plainNumber(value)} N`),
  count: plainNumber,
  times: plainNumber,
};

const lengths = { gap: formatGap, span: formatSpan, bar: formatBar };

/** A measure with its unit, in the reader's system. */
export function sayValue({ value, unit, as }: RuleValue, system: UnitSystem): string {
  if (unit === 'mm') {
    const format = as === undefined ? formatLength : lengths[as];
    return format(value, system);
  }
  return inUnits[unit]?.(value, system) ?? `${plainNumber(value)} ${unit}`;
}

/** Puts measures where a sentence has `{name}`. @throws when the sentence names one that isn't given */
export const fill = (sentence: string, values: Readonly<Record<string, RuleValue | string>>, system: UnitSystem) =>
  sentence.replace(/\{(\w+)\}/g, (_, name: string) => {
    const found = values[name];
    if (found === undefined) throw new Error(`No value for {${name}} in "${sentence}".`);
    return typeof found === 'string' ? found : sayValue(found, system);
  });

/** A rule's sentence with its own numbers, in the reader's units. */
export const sayRule = (rule: Pick<RuleRow, 'says' | 'values'>, system: UnitSystem): string =>
  fill(rule.says, rule.values, system);
