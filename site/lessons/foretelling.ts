import type { ModuleSlug } from '@lessons/course.ts';
import type { UnitSystem } from '@sim/units/format.ts';

/** Words that are the same in both unit systems, or a text for each. */
export type InUnits = string | Readonly<Record<UnitSystem, string>>;

/**
 * A choice that a lesson asks for before it shows the answer. Which one is right is computed where the file is read, so
 * that a changed rule changes the answer; the words stand in the lesson's language folder.
 */
export interface Foretelling {
  module: ModuleSlug;
  ask: InUnits;
  choices: readonly InUnits[];
  /** Place of the right choice. */
  right: number;
  /** What makes it right; shown once the reader has chosen. */
  why: InUnits;
}

export const wordsIn = (words: InUnits, units: UnitSystem): string =>
  typeof words === 'string' ? words : words[units];

/** The same sentence in both systems, each with its own numbers. */
export const inBoth = (say: (units: UnitSystem) => string): InUnits => ({
  imperial: say('imperial'),
  metric: say('metric'),
});

/** Place of the band that a value falls into; bands are the values between one choice and the next, rising. */
export const bandOf = (value: number, limits: readonly number[]): number =>
  limits.filter((limit) => value >= limit).length;
