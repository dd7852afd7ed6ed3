import { partBagWater } from '@sim/mortar/bag.ts';
import { valueOf } from '@sim/rules/rulebook.ts';
import type { UnitSystem } from '@sim/units/format.ts';
import { formatShare } from '@sim/units/format.ts';

const KG_PER_POUND = 0.45359237;
const L_PER_QUART = 0.946352946;

interface Bag {
  massKg: number;
  waterL: number;
  partKg: number;
}

/** A bag of each market with the water on an invented label, and the part that is wanted. */
const bags: Record<UnitSystem, Bag> = {
  imperial: { massKg: valueOf('bag.north-america', 'mass'), waterL: 5 * L_PER_QUART, partKg: 10 * KG_PER_POUND },
  metric: { massKg: valueOf('bag.elsewhere', 'mass'), waterL: 6, partKg: 5 },
};

const digits = (value: number): string => String(Number(value.toFixed(2)));
const mass = (kg: number, units: UnitSystem): string =>
  units === 'imperial' ? `${Math.round(kg / KG_PER_POUND)} lb` : `${digits(kg)} kg`;
const water = (litres: number, units: UnitSystem): string =>
  units === 'imperial' ? `${digits(litres / L_PER_QUART)} US qt` : `${digits(litres)} L`;

/** The lines of the example: what the bag says, what is weighed, the share, the water. */
export function partBagLines(
  units: UnitSystem,
): { label: 'bag' | 'water' | 'part' | 'share' | 'pour'; value: string }[] {
  const { massKg, waterL, partKg } = bags[units];
  return [
    { label: 'bag', value: mass(massKg, units) },
    { label: 'water', value: water(waterL, units) },
    { label: 'part', value: mass(partKg, units) },
    { label: 'share', value: formatShare(partKg / massKg) },
    { label: 'pour', value: water(partBagWater(partKg, waterL / massKg), units) },
  ];
}
