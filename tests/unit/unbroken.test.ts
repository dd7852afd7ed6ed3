import { expect, test } from 'vitest';

import { allRules } from '@sim/rules/rulebook.ts';
import { sayValue } from '@sim/rules/say.ts';
import type { UnitSystem } from '@sim/units/format.ts';
import { unbroken } from '@sim/units/unbroken.ts';

const SYSTEMS: readonly UnitSystem[] = ['imperial', 'metric'];

test('no rule’s number is parted from its unit, in either system', () => {
  const said = allRules().flatMap((rule) =>
    SYSTEMS.flatMap((system) => Object.values(rule.values).map((value) => sayValue(value, system))),
  );
  const measures = said.filter((text) => /^\S+ \S+$/.test(text));
  expect(measures.length).toBeGreaterThan(200);
  expect(measures.filter((text) => unbroken(text).includes(' '))).toEqual([]);
});

test('only numbers and their units are tied', () => {
  expect(unbroken('within 1/8 in in 10 ft, at 45° or more')).toBe('within 1/8\u00a0in in 10\u00a0ft, at 45° or more');
  expect(unbroken('3 inspectors had 2 lifted tiles, 9 o’clock')).toBe('3 inspectors had 2 lifted tiles, 9 o’clock');
  expect(unbroken('5 US qt on 100 ft²')).toBe('5\u00a0US\u00a0qt on 100\u00a0ft²');
  expect(unbroken('a 1/4 × 3/8 in notch')).toBe('a 1/4\u00a0×\u00a03/8\u00a0in notch');
  expect(unbroken('0.5 N/mm², 25 µg/m³, 80 %')).toBe('0.5\u00a0N/mm², 25\u00a0µg/m³, 80\u00a0%');
});
