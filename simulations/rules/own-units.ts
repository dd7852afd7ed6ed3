import type { UnitSystem } from '../units/format.ts';
import { MM_PER_INCH, toSquareFeet } from '../units/length.ts';
import type { RuleRow, RuleUnit, RuleValue } from './rule.ts';
import { sayValue } from './say.ts';

const SIXTY_FOURTH = MM_PER_INCH / 64;
const THOUSANDTH = MM_PER_INCH / 1000;
const TINY = 1e-6;
const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) < TINY;

/** Lengths and areas that stand in inches or feet where they come from: they are whole parts of one. */
const imperial: Partial<Record<RuleUnit, (value: number) => boolean>> = {
  mm: (value) => isWhole(value / SIXTY_FOURTH) || isWhole(value / THOUSANDTH),
  'mm²': (value) => isWhole(value / MM_PER_INCH ** 2),
  'm²': () => false,
  'm² per bag': (value) => isWhole(toSquareFeet(value)),
};

/** The system that a length or area was written in; null for other units, which don't show it. */
export function ownSystem({ value, unit }: RuleValue): UnitSystem | null {
  const written = imperial[unit];
  return written === undefined ? null : written(value) ? 'imperial' : 'metric';
}

/**
 * The measures of a rule's sentence as its source has them, where the reader's system prints them otherwise: the exact
 * figures behind the rounded ones. Empty where there is nothing to add.
 */
export function ownMeasures(rule: Pick<RuleRow, 'says' | 'values'>, reader: UnitSystem): string[] {
  const named = [...rule.says.matchAll(/\{(\w+)\}/g)].flatMap(([, name]) => rule.values[name ?? ''] ?? []);
  const said = named.flatMap((value) => {
    const own = ownSystem(value);
    return own === null || own === reader || sayValue(value, own) === sayValue(value, reader)
      ? []
      : [sayValue(value, own)];
  });
  return [...new Set(said)];
}
