import { assemblyRules } from './data/assemblies.ts';
import { bedRules } from './data/bed.ts';
import { coverageRules } from './data/coverage.ts';
import { flatnessRules } from './data/flatness.ts';
import { jointRules } from './data/joints.ts';
import { mortarRules } from './data/mortar.ts';
import { movementRules } from './data/movement.ts';
import { quantityRules } from './data/quantities.ts';
import { safetyRules } from './data/safety.ts';
import { samplingRules } from './data/sampling.ts';
import { techniqueRules } from './data/technique.ts';
import { warpageRules } from './data/warpage.ts';
import type { Rule } from './rule.ts';

const rows = {
  ...coverageRules,
  ...samplingRules,
  ...bedRules,
  ...techniqueRules,
  ...quantityRules,
  ...warpageRules,
  ...jointRules,
  ...flatnessRules,
  ...movementRules,
  ...mortarRules,
  ...assemblyRules,
  ...safetyRules,
};

export type RuleId = keyof typeof rows;
export type RuleNamed<K extends RuleId> = (typeof rows)[K] & { id: K };

const byId = new Map<string, Rule>(Object.entries(rows).map(([id, row]) => [id, { id, ...row }]));

export const isRuleId = (text: string): text is RuleId => byId.has(text);

/** The rule of that id. @throws when there is none, so that a page with a misspelt id doesn't build */
export function ruleById<K extends RuleId>(id: K): RuleNamed<K> {
  const rule = byId.get(id);
  if (!rule) throw new Error(`There is no rule "${id}"; the ids stand in simulations/rules/README.md.`);
  return rule as unknown as RuleNamed<K>;
}

/** Every rule, in the order of the data files. */
export const allRules = (): readonly Rule[] => [...byId.values()];

/** The number of a rule's value, in the unit that the rule states (lengths mm, shares 0…1). */
export function valueOf<K extends RuleId>(id: K, name: keyof RuleNamed<K>['values'] & string): number {
  const found = byId.get(id)?.values[name];
  if (!found) throw new Error(`Rule "${id}" has no value "${name}".`);
  return found.value;
}
