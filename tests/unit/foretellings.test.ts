import { describe, expect, it } from 'vitest';

import { course } from '@lessons/course.ts';
import { bandOf, wordsIn, type Foretelling } from '@site/lessons/foretelling.ts';

const files = import.meta.glob<{ prediction: Foretelling }>('/lessons/en/predictions/*.ts', { eager: true });

describe.each(Object.entries(files))('%s', (_, { prediction }) => {
  it('belongs to a module and asks a question with a right answer among its choices', () => {
    expect(course.map((one) => one.slug)).toContain(prediction.module);
    expect(prediction.choices.length).toBeGreaterThan(1);
    expect(prediction.choices[prediction.right]).toBeDefined();
  });

  it('reads in both unit systems, with unlike choices and no number left out', () => {
    for (const units of ['imperial', 'metric'] as const) {
      const texts = [prediction.ask, ...prediction.choices, prediction.why].map((text) => wordsIn(text, units));
      expect(new Set(texts).size).toBe(texts.length);
      texts.forEach((text) => expect(text).not.toMatch(/NaN|undefined|\{|\}/));
    }
  });
});

describe('bands', () => {
  it('names the place of a value between rising limits', () => {
    expect([0, 0.98, 1, 1.02, 5].map((value) => bandOf(value, [0.98, 1.02]))).toEqual([0, 1, 1, 2, 2]);
  });
});
