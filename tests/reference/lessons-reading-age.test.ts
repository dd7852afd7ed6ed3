/**
 * Lessons are read by apprentices in the evening: grade six of the Flesch–Kincaid formula (Kincaid et al., 1975) at
 * most, by a kept library, and no sentence that runs away.
 */
import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { describe, expect, it } from 'vitest';

import { allTexts, lessonTexts, type LessonText } from './lesson-text.ts';

const MOST_GRADE = 6;
const MOST_WORDS_IN_A_SENTENCE = 36;

const sentences = (prose: string): string[] =>
  prose
    .replace(/([^.!?:])\n\n/g, '$1.\n\n')
    .split(/(?<=[.!?])["”’)]?\s+|\n\n+/)
    .map((one) => one.replace(/\s+/g, ' ').trim())
    .filter((one) => /[a-z]{2}/i.test(one));
const words = (text: string): string[] => text.match(/[A-Za-zÀ-ÿ’'-]*[A-Za-zÀ-ÿ]/g) ?? [];

export function gradeOf({ prose }: Pick<LessonText, 'prose'>): number {
  const all = sentences(prose);
  const every = words(all.join(' '));
  return fleschKincaid({
    sentence: all.length,
    word: every.length,
    syllable: every.reduce((sum, word) => sum + syllable(word), 0),
  });
}

describe.each(allTexts())('$file', (text) => {
  it(`reads at grade ${MOST_GRADE} or below`, () => {
    expect(gradeOf(text)).toBeLessThanOrEqual(MOST_GRADE);
  });

  it('has no sentence that runs away', () => {
    expect(sentences(text.prose).filter((one) => words(one).length > MOST_WORDS_IN_A_SENTENCE)).toEqual([]);
  });
});

describe.each(lessonTexts())('$file', ({ prose }) => {
  // Words as a reader meets them: sentences, titles and questions; a computed number counts one; figures and checks none.
  it('is short: 600 to 900 words', () => {
    expect(words(prose).length).toBeGreaterThanOrEqual(600);
    expect(words(prose).length).toBeLessThanOrEqual(900);
  });
});

it('grades a known text as published', () => {
  // The formula by hand: 0.39 × 13 words ÷ 1 sentence + 11.8 × 24 syllables ÷ 13 words − 15.59 = 11.26
  expect(fleschKincaid({ sentence: 1, word: 13, syllable: 24 })).toBeCloseTo(0.39 * 13 + (11.8 * 24) / 13 - 15.59, 6);
  expect(
    gradeOf({
      prose:
        'The utilisation of heterogeneous cementitious formulations necessitates comprehensive substrate characterisation.',
    }),
  ).toBeGreaterThan(MOST_GRADE);
});
