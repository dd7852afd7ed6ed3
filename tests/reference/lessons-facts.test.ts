/**
 * Every number of the trade in a lesson comes through a component that reads a rule: no digit with a unit stands in the
 * text itself, every rule named exists, and the page lists each rule that its text uses.
 */
import { describe, expect, it } from 'vitest';

import { terms } from '@lessons/en/terms.ts';
import { commonNotches } from '@sim/trowel/common-notches.ts';
import { isRuleId, ruleById } from '@sim/rules/rulebook.ts';
import type { Rule } from '@sim/rules/rule.ts';

import { allTexts, lessonTexts } from './lesson-text.ts';

const UNIT =
  /\d[\d.,/ ]*\s?(?:%|°|″|"|mm\b|cm\b|m²|ft\b|ft²|in\b|inch|feet\b|foot\b|lb\b|lbs\b|kg\b|g\b|L\b|litres?\b|qt\b|gal|min\b|minutes?\b|hours?\b|h\b|days?\b|N\b|Pa\b|psi\b|rpm\b|ppm\b|µg)/;
/** Fractions are how the trade names notches and lips. */
const FRACTION = /\b\d+\/\d+\b/;

const attributes = (tag: string): Record<string, string> =>
  Object.fromEntries([...tag.matchAll(/(\w+)="([^"]*)"/g)].map((match) => [match[1] ?? '', match[2] ?? '']));

describe.each(allTexts())('$file', ({ body, prose, rules }) => {
  const tags = [...body.matchAll(/<(Fact|Rule|NotchName)\b([^>]*)\/>/g)].map((match) => ({
    name: match[1],
    ...attributes(match[2] ?? ''),
  })) as { name: string; id?: string; value?: string }[];

  it('types no number of the trade in its text', () => {
    const bare = prose.split('\n').filter((line) => UNIT.test(line) || FRACTION.test(line));
    expect(bare).toEqual([]);
  });

  it('types none into a component either', () => {
    expect(body.match(/<(?:Amount|Measure)\b[^>]*=\{[\d.]+\}/g) ?? []).toEqual([]);
  });

  it('names only rules and values that exist', () => {
    for (const { name, id = '', value } of tags) {
      if (name === 'NotchName') {
        // One named by a worked example is looked up when the page is built.
        if (id !== '') expect(commonNotches.map((one) => one.id)).toContain(id);
        continue;
      }
      expect(isRuleId(id), id).toBe(true);
      if (!isRuleId(id) || name === 'Rule') continue;
      const rule: Rule = ruleById(id);
      if (value === undefined) expect(Object.keys(rule.values), `${id} needs value=`).toHaveLength(1);
      else expect(Object.keys(rule.values), id).toContain(value);
    }
  });

  it('lists the rules that its text uses', () => {
    if (rules.length === 0) return; // an instructor page leans on its module's list
    const used = tags.filter(({ name }) => name !== 'NotchName').map(({ id }) => id);
    expect(used.filter((id) => !rules.includes(id ?? ''))).toEqual([]);
    expect(rules.filter((id) => !isRuleId(id))).toEqual([]);
    expect(new Set(rules).size).toBe(rules.length);
  });
});

describe.each(lessonTexts())('$file', ({ body, terms: explained }) => {
  it('links each term that it explains where it first stands, and none that the glossary lacks', () => {
    const linked = [...body.matchAll(/<Term id="([^"]*)"/g)].map((match) => match[1] ?? '');
    expect(linked.filter((id) => !Object.hasOwn(terms, id))).toEqual([]);
    expect(explained.filter((id) => !Object.hasOwn(terms, id))).toEqual([]);
    expect(new Set(linked).size, 'a term is linked once').toBe(linked.length);
  });
});

it('finds the lessons', () => {
  expect(lessonTexts().length).toBeGreaterThanOrEqual(9);
});

it('would notice a number typed in', () => {
  for (const typed of ['about 95 % of it', 'a 1/4 notch', '3 mm deep', 'for 20 minutes', 'at 45° or so'])
    expect(UNIT.test(typed) || FRACTION.test(typed), typed).toBe(true);
});
