import { expect, test } from 'vitest';

import { allRules } from '@sim/rules/rulebook.ts';
import { bestValues } from '../reference/rules-checks/best-values.ts';
import type { Check } from '../reference/rules-checks/check.ts';
import { modelChecks } from '../reference/rules-checks/model.ts';
import { printedPlaces } from '../reference/rules-checks/printed-places.ts';
import { printedThings } from '../reference/rules-checks/printed-things.ts';

/**
 * Changes each number of the rules in turn, up and down by two in a hundred, and expects some check to fail. A number
 * that nothing notices is a number nobody has held against its source.
 */
const checks: readonly Check[] = [...printedPlaces, ...printedThings, ...modelChecks, ...bestValues];
const STEP = 0.02;

const fails = (one: Check): boolean => {
  try {
    one.holds();
    return false;
  } catch {
    return true;
  }
};

/** The checks that name a rule first: they are the likeliest to notice. */
const inOrder = (id: string): Check[] =>
  checks.toSorted((a, b) => Number(b.name.includes(id)) - Number(a.name.includes(id)));

test('untouched, every check holds', () => {
  expect(checks.filter(fails).map((one) => one.name)).toEqual([]);
});

test('every number of the rules is held by a check', () => {
  const survivors: string[] = [];
  let mutants = 0;
  for (const rule of allRules())
    for (const [name, entry] of Object.entries(rule.values)) {
      const held = entry as { value: number };
      const { value } = held;
      for (const factor of [1 + STEP, 1 - STEP]) {
        mutants += 1;
        held.value = value === 0 ? factor - 1 : value * factor;
        if (!inOrder(rule.id).some(fails)) survivors.push(`${rule.id}.${name}: ${value} → ${held.value}`);
        held.value = value;
      }
    }
  console.log(`${mutants} mutants, ${survivors.length} survive`);
  expect(survivors).toEqual([]);
});
