import { describe, expect, test } from 'vitest';

import { ownMeasures, ownSystem } from '@sim/rules/own-units.ts';
import { allRules, ruleById } from '@sim/rules/rulebook.ts';
import { sayRule, sayValue } from '@sim/rules/say.ts';
import { feet, inches } from '@sim/units/length.ts';
import { parseLength } from '@sim/units/parse-length.ts';
import { formatBar, formatSpan } from '@sim/units/span.ts';

describe('a length across a floor', () => {
  test('that is whole feet is said in tenths of a metre, as TCNA EJ171 gives its joints (from memory)', () => {
    expect([8, 12, 25].map((value) => formatSpan(feet(value), 'metric'))).toEqual(['2.4 m', '3.7 m', '7.6 m']);
    expect([8, 12, 25].map((value) => formatSpan(feet(value), 'imperial'))).toEqual(['8 ft', '12 ft', '25 ft']);
  });
  test('that is half metres is said to the half foot', () => {
    expect([2000, 3000, 4500].map((value) => formatSpan(value, 'imperial'))).toEqual(['6 1/2 ft', '10 ft', '15 ft']);
    expect([2000, 3000, 4500].map((value) => formatSpan(value, 'metric'))).toEqual(['2 m', '3 m', '4.5 m']);
  });
  test('that somebody measured keeps its figures', () => {
    expect(formatSpan(3350, 'metric')).toBe('3.35 m');
    expect(formatSpan(inches(99), 'imperial')).toBe('8.25 ft');
    expect(formatSpan(inches(99), 'metric')).toBe('2.51 m');
  });
  test('is never said by more than three parts in a hundred off', () => {
    for (let tape = 3; tape <= 60; tape += 1) {
      const said = parseLength(formatSpan(feet(tape), 'metric'), 'mm') ?? NaN;
      expect(Math.abs(said / feet(tape) - 1), `${tape} ft`).toBeLessThan(0.03);
    }
  });
  test('of a short bar is said as it is cut', () => {
    expect([12, 24].map((value) => formatBar(inches(value), 'metric'))).toEqual(['300 mm', '600 mm']);
    expect([12, 24].map((value) => formatBar(inches(value), 'imperial'))).toEqual(['12 in', '24 in']);
    expect(formatBar(450, 'metric')).toBe('450 mm');
  });
});

describe('a rule’s own units', () => {
  test('give ANSI A108.02, 4.2.2 as it is printed, to a reader in millimetres only', () => {
    const flatness = ruleById('flatness.large');
    expect(sayRule(flatness, 'metric')).toContain(
      '381 mm and more the floor is within 3.2 mm in 3 m and 1.6 mm in 600 mm',
    );
    expect(ownMeasures(flatness, 'metric')).toEqual(['15 in', '1/8 in', '10 ft', '1/16 in', '24 in']);
    expect(ownMeasures(flatness, 'imperial')).toEqual([]);
  });
  test('give BS 5385 as it is printed, to a reader in inches only', () => {
    expect(ownMeasures(ruleById('flatness.uk'), 'imperial')).toEqual(['3 mm', '2 m']);
    expect(ownMeasures(ruleById('flatness.uk'), 'metric')).toEqual([]);
  });
  const lengths = allRules().flatMap(({ id, values }) =>
    Object.entries(values)
      .filter(([, { unit }]) => unit === 'mm')
      .map(([name, value]) => ({ at: `${id}.${name}`, value })),
  );
  test.each(lengths)('$at is exact in them', ({ value }) => {
    const own = ownSystem(value);
    expect(own).not.toBeNull();
    expect(parseLength(sayValue(value, own ?? 'metric'), 'mm')).toBeCloseTo(value.value, 6);
  });
});
