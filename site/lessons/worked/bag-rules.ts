import type { BagRules } from '@site/islands/figures/bags.ts';
import { yieldLitres } from '@sim/mortar/bag.ts';
import { valueOf } from '@sim/rules/rulebook.ts';

const middle = (low: number, high: number): number => (low + high) / 2;

/** The numbers that a bag count reckons with, from the rules. */
export function bagRules(): BagRules {
  const bagKg = valueOf('bag.north-america', 'mass');
  const water = [valueOf('mortar.water', 'least'), valueOf('mortar.water', 'most')] as const;
  const density = [valueOf('mortar.density', 'least'), valueOf('mortar.density', 'most')] as const;
  const bag = (waterLPerKg: number, densityKgM3: number): number => yieldLitres({ bagKg, waterLPerKg, densityKgM3 });
  return {
    bagKg,
    yields: {
      least: bag(water[0], density[1]),
      usual: bag(middle(...water), middle(...density)),
      most: bag(water[1], density[0]),
    },
    back: { least: valueOf('butter.extra', 'least'), most: valueOf('butter.extra', 'most') },
    lowDeg: valueOf('bags.spread', 'low'),
    highDeg: valueOf('bags.spread', 'high'),
    uprightDeg: valueOf('trowel.upright', 'upright'),
    headlineRate: middle(valueOf('rate.label', 'least'), valueOf('rate.label', 'most')),
    leastBedMm: valueOf('bed.least', 'bed'),
  };
}
