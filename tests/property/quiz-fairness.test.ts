import { describe, expect, test } from 'vitest';

import { bank } from '@quiz/bank.ts';
import { compose } from '@quiz/engine/compose.ts';

import { blindHits, type Tally, tallyTemplate, unevenness } from './quiz-tally.ts';

/** Seeds a template; odd ones in metric, even ones in imperial. */
const SEEDS = 2000;

/** A guesser who never reads the job gets at most this share of the choices; a coin between two gets half. */
const MOST_BLIND = 0.66;

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

  test('letters and keys stay the same when the units are switched', () => {
    for (let seed = 0; seed < 40; seed++) {
      const [imperial, metric] = (['imperial', 'metric'] as const).map((units) =>
        compose(bank, { template: id, seed, slot: 3 }, units),
      );
      if (imperial?.item.form.kind === 'number') {
        expect(metric?.key.number).toEqual(imperial.key.number);
        continue;
      }
      expect(metric?.key.right).toBe(imperial?.key.right);
      expect(metric?.key.decisions).toEqual(imperial?.key.decisions);
    }
  });
});
