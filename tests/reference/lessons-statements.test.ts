/** The lessons reviewed line by line: each statement of the list stands in its lesson, and the lesson names its rule. */
import { describe, expect, it } from 'vitest';

import { isRuleId } from '@sim/rules/rulebook.ts';
import { lesson, statusWords } from '@site/messages/en/lesson.ts';

import { lessonTexts } from './lesson-text.ts';
import { craft } from './lessons-statements-craft.ts';
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

describe.each(Object.entries(craft))('%s, without a rule of its own', (slug, list) => {
  const prose = plain(texts.get(slug)?.prose ?? '');

  it.each(list)('%s (%s)', (says) => {
    expect(prose).toContain(plain(says));
  });

  it('says at least eight such things, none of them twice, none that the list of rules has already', () => {
    const says = list.map(([one]) => plain(one));
    const ruled = ({ ...firstStatements, ...statements }[slug as keyof typeof craft] ?? []).map(([one]) => plain(one));
    expect(says.length).toBeGreaterThanOrEqual(8);
    expect(new Set(says).size).toBe(says.length);
    expect(says.filter((one) => ruled.includes(one))).toEqual([]);
  });
});

it('tells the reader what stands without a source', () => {
  expect(lesson.sourcesSay).toContain(statusWords['common-practice'].replace(', ', ', with '));
});
