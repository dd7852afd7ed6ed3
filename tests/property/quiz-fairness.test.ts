import { describe, expect, test } from 'vitest';

import { bank } from '@quiz/bank.ts';

import { blindHits, type Tally, tallyTemplate, unevenness } from './quiz-tally.ts';

/** Seeds a template; odd ones in metric, even ones in imperial. */
const SEEDS = 2000;

/** A guesser who never reads the job gets at most this share of the choices; a coin between two gets half. */
const MOST_BLIND = 0.66;

/** Inches of common tile in whole millimetres. */
const DISGUISED = new Set([4, 8, 10, 12, 16, 18, 24, 36, 48].map((inch) => Math.round(inch * 25.4)));
/** Sizes of tile and notches, as they are said: 600 × 300 mm, 6 × 10 × 6 mm. */
const sizesIn = (text: string): number[] =>
  [...text.matchAll(/\d+(?:\.\d+)?(?: × \d+(?:\.\d+)?)+ mm/g)].flatMap(([size]) =>
    size.replace(' mm', '').split(' × ').map(Number),
  );

const tallies = new Map<string, Tally>();
const tallyOf = (id: string): Tally => {
  const known = tallies.get(id);
  if (known) return known;
  const made = tallyTemplate(bank, id, SEEDS);
  tallies.set(id, made);
  return made;
};

describe.each(bank.templates.map(({ id, ideas }) => ({ id, ideas })))('$id', ({ id, ideas }) => {
  test('every item is whole, has one right answer by its own marking, and no two choices alike', () => {
    expect(tallyOf(id).faults).toEqual([]);
    expect(tallyOf(id).items).toBe(SEEDS);
  });

  test('the key stands in every place alike (chi-square, 99.99 %)', () => {
    for (const [places, counts] of tallyOf(id).places)
      expect(unevenness(counts), `${places} places: ${counts.join(', ')}`).toBeLessThan(1);
  });

  test('the longest choice is not the key more often than chance', () => {
    const { seen, key, chance } = tallyOf(id).longest;
    // Three and a third standard deviations of as many tosses.
    const slack = 3.3 * Math.sqrt(Math.max(0, chance * (1 - chance / Math.max(1, seen))));
    expect(key).toBeLessThanOrEqual(chance + slack);
  });

  test('the job must be read', () => {
    expect(blindHits(tallyOf(id).keyed)).toBeLessThanOrEqual(MOST_BLIND);
    const answers = new Set(tallyOf(id).keyed.map(({ key }) => key.says));
    expect(answers.size).toBeGreaterThan(1);
  });

  test('it shows the wrong ideas it says it shows', () => {
    expect([...tallyOf(id).ideas].sort()).toEqual([...ideas].sort());
  });

  test('tile and tools are of the sizes sold where the reader works, and none is an inch size in disguise', () => {
    const odd = tallyOf(id)
      .keyed.filter(({ item }) => item.units === 'metric')
      .flatMap(({ item, key }) => sizesIn([...item.story, item.ask, JSON.stringify(item.form), key.says].join(' ')))
      .filter((size) => !Number.isInteger(size) || DISGUISED.has(size));
    expect([...new Set(odd)]).toEqual([]);
  });
});

test('a disguised inch size would be noticed', () => {
  expect(sizesIn('A 610 × 305 mm tile on a 6.4 × 9.5 × 6.4 mm square trowel')).toEqual([610, 305, 6.4, 9.5, 6.4]);
});
