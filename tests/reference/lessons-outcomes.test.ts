/** No outcome is an orphan: what a module promises has words, and at least two templates of the bank examine it. */
import { describe, expect, it } from 'vitest';

import { course } from '@lessons/course.ts';
import { outcomeWords } from '@lessons/en/outcomes.ts';
import { outcomes } from '@lessons/outcomes.ts';
import { bank } from '@quiz/bank.ts';

const LEAST = 2;

describe.each(course.map(({ slug }) => slug))('%s', (slug) => {
  it('promises three outcomes or four', () => {
    expect(outcomes[slug].length).toBeGreaterThanOrEqual(3);
    expect(outcomes[slug].length).toBeLessThanOrEqual(4);
  });

  it.each(outcomes[slug])('%s has words and is examined by two templates at least', (outcome) => {
    expect(outcomeWords[outcome]).toMatch(/^[a-z].{10,}/);
    const examining = bank.templates.filter((one) => one.outcomes.includes(outcome));
    expect(examining.length).toBeGreaterThanOrEqual(LEAST);
  });
});

it('no template examines what no module promises', () => {
  const promised: readonly string[] = Object.values(outcomes).flat();
  expect(new Set(promised).size).toBe(promised.length);
  expect(bank.templates.flatMap((one) => one.outcomes).filter((id) => !promised.includes(id))).toEqual([]);
});
