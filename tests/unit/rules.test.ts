import { describe, expect, test } from 'vitest';

import { decide, withMaker } from '@sim/rules/decide.ts';
import { mergeOrder } from '@sim/rules/order.ts';
import { ruleSchema, standardSets } from '@sim/rules/rule.ts';
import { allRules, isRuleId, ruleById, valueOf } from '@sim/rules/rulebook.ts';
import { fill, sayRule, sayValue } from '@sim/rules/say.ts';
import { plainNumber } from '@sim/units/plain-number.ts';
import { safeParse } from 'zod/mini';

describe('every row', () => {
  test.each(allRules().map((rule) => [rule.id, rule] as const))('%s is whole', (_, rule) => {
    const result = safeParse(ruleSchema, rule);
    expect(result.error?.issues ?? []).toEqual([]);
    for (const { value } of Object.values(rule.values)) expect(Number.isFinite(value)).toBe(true);
  });
  test.each(allRules().map((rule) => [rule.id, rule] as const))(
    '%s says each of its numbers or keeps it for a table',
    (_, rule) => {
      for (const units of ['imperial', 'metric'] as const) {
        const said = sayRule(rule, units);
        expect(said).not.toMatch(/[{}]|NaN|undefined/);
        expect(said.endsWith('.')).toBe(true);
      }
      const named = [...rule.says.matchAll(/\{(\w+)\}/g)].map(([, name]) => name ?? '');
      for (const name of named) expect(Object.keys(rule.values)).toContain(name);
    },
  );
  test('a published rule names more than its status, and nothing names where we read it', () => {
    for (const { source, id } of allRules()) {
      expect(source.title.length, id).toBeGreaterThanOrEqual(3);
      if (source.status === 'published') expect(source.title, id).not.toMatch(/practice|memory/i);
    }
  });
  test('a row without source, status or a full stop is refused', () => {
    const good = allRules()[0];
    for (const bad of [
      { ...good, source: undefined },
      { ...good, source: { title: 'x standard' } },
      { ...good, says: 'no stop' },
      { ...good, id: 'NoDots' },
      { ...good, extra: 1 },
    ])
      expect(safeParse(ruleSchema, bad).success).toBe(false);
  });
  test('nothing unconfirmed is printed', () => {
    // Figures that were found in no print: a notch by edge in DIN 18157, shares in BS 5385, V-notch bag rates, the
    // contact of panels outdoors, rib limits of JIS A 5209.
    const all = allRules().map((rule) => `${sayRule(rule, 'metric')} ${rule.source.title}`);
    expect(all.some((one) => /JIS|A108\.20|UNE 138002|DTU/.test(one))).toBe(false);
    expect(all.some((one) => one.includes('BS 5385') && one.includes('%'))).toBe(false);
  });
});

describe('finding a rule', () => {
  test('by id, or a clear failure', () => {
    expect(ruleById('coverage.wet').values.share.value).toBe(0.95);
    expect(valueOf('bed.least', 'bed')).toBeCloseTo(2.38125, 9);
    expect(isRuleId('coverage.wet')).toBe(true);
    expect(isRuleId('toString')).toBe(false);
    expect(() => ruleById('coverage.wte' as 'coverage.wet')).toThrow('There is no rule "coverage.wte"');
    expect(() => valueOf('coverage.wet', 'shares' as 'share')).toThrow('has no value "shares"');
  });
});

describe('measures', () => {
  test('print in both systems', () => {
    expect(sayValue({ value: 2.38125, unit: 'mm' }, 'imperial')).toBe('3/32 in');
    expect(sayValue({ value: 2.38125, unit: 'mm' }, 'metric')).toBe('2.4 mm');
    expect(sayValue({ value: 3048, unit: 'mm', as: 'span' }, 'imperial')).toBe('10 ft');
    expect(sayValue({ value: 1.27, unit: 'mm', as: 'gap' }, 'imperial')).toBe('0.050 in');
    expect(sayValue({ value: 0.95, unit: 'share' }, 'metric')).toBe('95 %');
    expect(sayValue({ value: 0.004, unit: 'share' }, 'metric')).toBe('0.4 %');
    expect(sayValue({ value: 1290.32, unit: 'mm²' }, 'imperial')).toBe('2 in²');
    expect(sayValue({ value: 1290.32, unit: 'mm²' }, 'metric')).toBe('12.9 cm²');
    expect(sayValue({ value: 22.7, unit: 'kg' }, 'imperial')).toBe('50 lb');
    // 1 L/m² is 0.264172 US gal on 10.7639 ft²; 1.2 kg/m² per mm is 0.24578 lb/ft² per mm, and 1/8 in is 3.175 mm
    expect(sayValue({ value: 3, unit: 'L/m²' }, 'imperial')).toBe('7.36 US gal/100 ft²');
    expect(sayValue({ value: 3, unit: 'L/m²' }, 'metric')).toBe('3 L/m²');
    expect(sayValue({ value: 1.2, unit: 'kg/m² per mm' }, 'imperial')).toBe('0.78 lb/ft² per 1/8 in');
    expect(sayValue({ value: 10, unit: '°C' }, 'imperial')).toBe('50 °F');
    expect(sayValue({ value: 10, unit: 'K' }, 'imperial')).toBe('18 °F');
    expect(sayValue({ value: 1.38, unit: 'N/mm²' }, 'imperial')).toBe('200 psi');
    expect(sayValue({ value: 7.4322432, unit: 'm² per bag' }, 'imperial')).toBe('80 ft²');
    expect(plainNumber(1 / 3)).toBe('0.333');
  });
  test('a sentence that names what it is not given fails aloud', () => {
    expect(() => fill('at {nothing}', {}, 'metric')).toThrow('{nothing}');
    expect(fill('{a} and {b}', { a: 'words', b: { value: 3, unit: 'count' } }, 'metric')).toBe('words and 3');
  });
});

describe('merging', () => {
  const dry = { rule: 'coverage.dry', applies: true, value: 0.8 } as const;
  const wet = { rule: 'coverage.wet', applies: true, value: 0.95 } as const;
  const italian = { rule: 'coverage.uni-interior', applies: true, value: 0.99 } as const;
  test('the strictest that applies in the set decides, and every other is accounted for', () => {
    const found = decide('coverage', 'north-america', [
      dry,
      wet,
      italian,
      { ...wet, rule: 'coverage.glass', applies: false },
    ]);
    expect(found).toMatchObject({ value: 0.95, rule: 'coverage.wet' });
    expect(found?.trace.map((one) => one.outcome)).toEqual([
      'less-strict',
      'decides',
      'other-standards',
      'does-not-apply',
    ]);
  });
  test('for offset, lippage, flatness and movement joints less is stricter', () => {
    for (const subject of ['offset', 'lippage', 'flatness', 'movement'] as const)
      expect(mergeOrder[subject].strictest).toBe('least');
    expect(decide('offset', 'north-america', [dry, wet])?.value).toBe(0.8);
  });
  test('nothing that applies: no decision', () => {
    expect(decide('coverage', 'north-america', [{ ...dry, applies: false }, italian])).toBeNull();
  });
  test('a maker’s stricter figure is taken and named; a laxer one is refused, never silently', () => {
    const ours = decide('coverage', 'north-america', [dry]);
    if (!ours) throw new Error('no decision');
    const raised = withMaker(ours, 'coverage.maker', 0.9);
    expect(raised.effect).toBe('raised');
    expect(raised.decision).toMatchObject({ value: 0.9, rule: 'coverage.maker' });
    expect(raised.decision.trace.map((one) => one.outcome)).toEqual(['decides', 'overridden']);
    const refused = withMaker(ours, 'coverage.maker', 0.5);
    expect(refused.effect).toBe('refused');
    expect(refused.decision.value).toBe(0.8);
    expect(refused.decision.trace.at(-1)).toMatchObject({ rule: 'coverage.maker', outcome: 'less-strict' });
    expect(withMaker(ours, 'coverage.maker', 0.8).effect).toBe('agrees');
  });
  test('equal figures agree', () => {
    const found = decide('coverage', 'north-america', [wet, { ...wet, rule: 'coverage.stone' }]);
    expect(found?.trace.map((one) => one.outcome)).toEqual(['decides', 'agrees']);
  });
  test('two sets of standards, and every set decides every place', () => {
    expect(standardSets).toEqual(['north-america', 'iso-en']);
  });
});
