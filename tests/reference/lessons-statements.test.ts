/** The lessons reviewed line by line: each statement of the list stands in its lesson, and the lesson names its rule. */
import { describe, expect, it } from 'vitest';

import { isRuleId } from '@sim/rules/rulebook.ts';

import { lessonTexts } from './lesson-text.ts';
import { firstStatements } from './lessons-statements-first.ts';
import { statements } from './lessons-statements.ts';

const plain = (text: string): string =>
  text
    .replaceAll('’', "'")
    .replace(/\s+/g, ' ')
    .replace(/\s+([.,:;?!])/g, '$1')
    .toLowerCase();
const texts = new Map(lessonTexts().map((text) => [text.slug, text]));

/** Rules that a page shows by a figure or a worked example alone. */
const inFigures: Record<string, string[]> = {
  mixing: ['bag.elsewhere'],
  'wet-outdoors-heated': ['coverage.submerged'],
};

describe.each(Object.entries({ ...firstStatements, ...statements }))('%s', (slug, list) => {
  const text = texts.get(slug);
  const prose = plain(text?.prose ?? '');

  it.each(list)('%s', (says, rule) => {
    expect(prose).toContain(plain(says));
    expect(isRuleId(rule)).toBe(true);
    expect(text?.rules, `${slug} must list ${rule}`).toContain(rule);
  });

  it('states every rule that it lists, or shows it in a figure', () => {
    const stated = new Set([
      ...list.map(([, rule]) => rule),
      ...[...(text?.body ?? '').matchAll(/<(?:Fact|Rule) id="([^"]*)"/g)].map((match) => match[1]),
      ...(inFigures[slug] ?? []),
    ]);
    expect(text?.rules.filter((rule) => !stated.has(rule))).toEqual([]);
  });
});
