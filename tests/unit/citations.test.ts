import { existsSync, readFileSync } from 'node:fs';

import { expect, test } from 'vitest';

import { citationsText } from '../../site/commands/citations.ts';
import { methodWorks } from '@sim/rules/method-works.ts';
import { allRules } from '@sim/rules/rulebook.ts';
import { citedWorks } from '@sim/rules/works.ts';

test('the list of published sources is the one the rules make (`npm run cite`)', () =>
  expect(readFileSync('simulations/rules/CITATIONS.md', 'utf8')).toBe(citationsText()));

test('each published rule stands under its source once, and no other rule does', () => {
  const listed = citedWorks().flatMap((work) => work.rules.map(({ id }) => id));
  const published = allRules().filter(({ source }) => source.status === 'published');
  expect(listed.toSorted()).toEqual(published.map(({ id }) => id).toSorted());
});

test.each(methodWorks)('$work is used where it says', ({ file }) => expect(existsSync(file)).toBe(true));
