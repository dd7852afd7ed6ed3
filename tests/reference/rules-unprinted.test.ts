import { expect, test } from 'vitest';

import { words as planWords } from '@sim/estimate/words/en.ts';
import { words as judgeWords } from '@sim/judge/words/en.ts';
import { allRules } from '@sim/rules/rulebook.ts';
import { sayRule } from '@sim/rules/say.ts';
import { english } from '@quiz/words/en/all.ts';
import { UNCONFIRMED } from './unconfirmed.ts';

/** Every sentence the core may say: rules in both unit systems with their sources, plan, judge and questions. */
const rules = allRules().map((rule) =>
  [
    sayRule(rule, 'imperial'),
    sayRule(rule, 'metric'),
    rule.title,
    rule.disagreement,
    Object.values(rule.source).join(', '),
  ].join(' | '),
);
const sentences = (from: unknown): string[] =>
  typeof from === 'string' ? [from] : typeof from === 'object' && from ? Object.values(from).flatMap(sentences) : [];
const lines = [...rules, ...sentences(planWords), ...sentences(judgeWords), ...sentences(english)];

test.each(UNCONFIRMED)('%s is said nowhere', (_, sign) => {
  expect(rules.length).toBeGreaterThan(200);
  expect(lines.length).toBeGreaterThan(1000);
  expect(lines.filter((line) => sign.test(line))).toEqual([]);
});

test('each sign would see what it looks for', () => {
  const written = [
    'By BS 5385 walls in the dry are 50 % bonded',
    'AS 3958:2023 asks for 90 %',
    'AS 3958.1 asks for a trowel of 6 mm',
    'DIN 18157-1 gives the notch by the edge',
    'ANSI A108.20 asks for 95 %',
    'For the mortar under it follow the maker; where the maker is silent, a thin bonded sheet lies in a small bed',
    'Cover over the cable is 10 mm',
    'A V notch gives 120 ft² a bag',
    'Some 15 L from a 50 lb bag',
    'A137.1 limits wedging',
    'A118.4 sag is under 1/64',
    'ISO 10545-2 takes 10 tiles',
    'EN 1015-3 counts 15 drops',
    'EN 12004-2 loads with 20 N',
    'NF DTU 52.2 tables',
    'JIS A 5209 ribs',
  ];
  expect(written).toHaveLength(UNCONFIRMED.length);
  UNCONFIRMED.forEach(([what, sign], at) => expect(written[at], what).toMatch(sign));
});
