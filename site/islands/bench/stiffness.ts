import { mortarRules } from '@sim/rules/data/mortar.ts';

/** How a mix behaves, in words a setter uses; the yield stress behind each stands in the rules. */
export type Stiffness = 'slumps' | 'holds' | 'stiff';

const { values } = mortarRules['mortar.stiffness'];

/** Yield stress of a mix that behaves so, Pa. */
export const valueOfMix = (kind: Stiffness): number => values[kind].value;

/** The word for a yield stress, or null for one between the words. */
export const stiffnessOf = (yieldPa: number): Stiffness | null =>
  (['slumps', 'holds', 'stiff'] as const).find((kind) => valueOfMix(kind) === yieldPa) ?? null;
