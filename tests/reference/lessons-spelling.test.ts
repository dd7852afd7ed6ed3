/** Every word of the lessons against a kept dictionary of British English; words of the trade and names stand beside. */
import { readFileSync } from 'node:fs';

import dictionary from 'dictionary-en-gb';
import nspell from 'nspell';
import { describe, expect, it } from 'vitest';

import { outcomeWords } from '@lessons/en/outcomes.ts';
import { terms } from '@lessons/en/terms.ts';

import { allTexts } from './lesson-text.ts';

const spell = nspell(Buffer.from(dictionary.aff), Buffer.from(dictionary.dic));
readFileSync('tests/reference/trade-words.txt', 'utf8')
  .split('\n')
  .filter((word) => word !== '' && !word.startsWith('#'))
  .forEach((word) => spell.add(word));

const wordsOf = (text: string): string[] => [
  ...new Set(
    (text.replaceAll('’', "'").match(/[A-Za-zÀ-ÖØ-öø-ÿ]+(?:'[a-z]+)?/g) ?? []).filter(
      (word) => !/^[A-Z]+\d*$/.test(word),
    ),
  ),
];
const misspelt = (text: string): string[] =>
  wordsOf(text).filter((word) => !spell.correct(word) && !spell.correct(word.replace(/'s$/, '')));

describe.each(allTexts())('$file', ({ prose, summary }) => {
  it('is spelt right', () => {
    expect(misspelt(`${summary}\n${prose}`)).toEqual([]);
  });
});

it('outcomes and terms are spelt right', () => {
  expect(misspelt(Object.values(outcomeWords).join('\n'))).toEqual([]);
  expect(
    misspelt(
      Object.values(terms)
        .map((one) => `${one.term}. ${one.says}`)
        .join('\n'),
    ),
  ).toEqual([]);
});

it('notices a slip', () => {
  expect(misspelt('The morter was thickk.')).toEqual(['morter', 'thickk']);
});
