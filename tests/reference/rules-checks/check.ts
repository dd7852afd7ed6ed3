import { expect } from 'vitest';

import { ruleById, type RuleId } from '@sim/rules/rulebook.ts';

/** One statement that must hold, with the source that says so beside it. */
export interface Check {
  name: string;
  source: string;
  holds: () => void;
}

/** Inches, feet, square inches, psi and the like as the sources print them. */
export const IN = 25.4;
export const FT = 304.8;
export const IN2 = 645.16;
export const FT2 = 0.09290304;
export const LB = 0.45359237;
export const PSI = 0.006894757;

/** Figures as their source prints them, turned to our units by the definition of the inch and the pound. */
export function printed(source: string, rule: RuleId, figures: Readonly<Record<string, number>>): Check {
  return {
    name: `${rule} prints as its source`,
    source,
    holds: () => {
      const { values } = ruleById(rule) as { values: Readonly<Record<string, { value: number }>> };
      for (const [name, figure] of Object.entries(figures)) {
        const value = values[name]?.value ?? Number.NaN;
        // Sources print two or three figures; half a per cent is well inside any misprint that matters.
        expect(Math.abs(value - figure), `${rule}.${name}: ${value} for ${figure}`).toBeLessThanOrEqual(
          Math.abs(figure) * 0.005,
        );
      }
    },
  };
}

export const check = (name: string, source: string, holds: () => void): Check => ({ name, source, holds });
