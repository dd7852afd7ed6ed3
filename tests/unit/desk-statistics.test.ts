import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { alpha, classStatistics, correlation } from '@quiz/records/statistics.ts';

/**
 * Ten students, ten items, worked by hand in K. Wuensch's notes on the Kuder-Richardson formula 20 (East Carolina
 * University, StatHelp): the share right of each item, Σpq and the variance of the totals (5.84, divided by n) are
 * printed there.
 */
const WORKED = [
  '1111110110',
  '1011011101',
  '1111011001',
  '0010001000',
  '0000010010',
  '1110111111',
  '1101110111',
  '1111111101',
  '0101111101',
  '1101101110',
].map((row) => [...row].map(Number));
const PRINTED_SHARES = [0.7, 0.7, 0.6, 0.7, 0.6, 0.8, 0.7, 0.7, 0.5, 0.6];
const PRINTED_VARIANCE = 5.84;

/** LSAT section 6, 1000 people, five items: Bock and Lieberman, Psychometrika 35 (1970) 179–197, table of patterns. */
const LSAT6: Record<string, number> = {
  '00000': 3, '00001': 6, '00010': 2, '00011': 11, '00100': 1, '00101': 1, '00110': 3, '00111': 4,
  '01000': 1, '01001': 8, '01010': 0, '01011': 16, '01100': 0, '01101': 3, '01110': 2, '01111': 15,
  '10000': 10, '10001': 29, '10010': 14, '10011': 81, '10100': 3, '10101': 28, '10110': 15, '10111': 80,
  '11000': 16, '11001': 56, '11010': 21, '11011': 173, '11100': 11, '11101': 61, '11110': 28, '11111': 298,
}; // prettier-ignore

describe('reliability', () => {
  test('is Kuder-Richardson 20 in the worked example', () => {
    const shares = PRINTED_SHARES.map((_, item) => WORKED.reduce((sum, row) => sum + (row[item] ?? 0), 0) / 10);
    expect(shares).toEqual(PRINTED_SHARES);
    const pq = PRINTED_SHARES.reduce((sum, share) => sum + share * (1 - share), 0);
    expect(alpha(WORKED)).toBeCloseTo((10 / 9) * (1 - pq / PRINTED_VARIANCE), 12);
    expect(alpha(WORKED)).toBeCloseTo(0.6963, 4);
  });
  test('is 0.295 for the law school data, as the manual of R’s package ltm prints it (from memory)', () => {
    const rows = Object.entries(LSAT6).flatMap(([pattern, count]) =>
      Array.from({ length: count }, () => [...pattern].map(Number)),
    );
    expect(rows).toHaveLength(1000);
    expect(alpha(rows)).toBeCloseTo(0.295, 3);
  });
  test('is 1 for items that all say the same, and about 0 for items that have nothing to do with each other', () => {
    const same = Array.from({ length: 12 }, (_, learner) => Array(6).fill(learner % 3) as number[]);
    expect(alpha(same)).toBeCloseTo(1, 12);
    const apart = Array.from({ length: 16 }, (_, learner) => [0, 1, 2, 3].map((bit) => (learner >> bit) & 1));
    expect(alpha(apart)).toBeCloseTo(0, 12);
  });
  test('is not given where nothing varies, or for one item', () => {
    expect(alpha([[1, 0], [1, 0], [1, 0]])).toBeNull(); // prettier-ignore
    expect(alpha([[1], [0]])).toBeNull();
    expect(alpha([])).toBeNull();
  });
});

describe('an item', () => {
  test('is held against the rest of the round, not against a total that holds it', () => {
    // Two items with nothing in common: against the total each would show 0.71.
    const rows = [[0, 0], [0, 1], [1, 0], [1, 1], [0, 0], [0, 1], [1, 0], [1, 1], [0, 0], [0, 1], [1, 0], [1, 1]]; // prettier-ignore
    expect(classStatistics(rows).items[0]?.discrimination).toBeCloseTo(0, 12);
  });
  test('that the weak get right and the strong wrong is said to work backwards', () => {
    const rows = Array.from({ length: 20 }, (_, n) => [
      n < 10 ? 1 : 0,
      n >= 10 ? 1 : 0,
      n >= 10 ? 1 : 0,
      n >= 10 ? 1 : 0,
    ]);
    const { items } = classStatistics(rows);
    expect(items[0]?.verdict).toBe('backwards');
    expect(items[1]?.verdict).toBe('separates');
    expect(items[0]?.discrimination).toBeCloseTo(-1, 12);
  });
  test('has no verdict, and the class no reliability, under ten learners', () => {
    const nine = classStatistics(WORKED.slice(0, 9));
    expect(nine.reliability).toBeNull();
    expect(nine.items.every((item) => item.verdict === null)).toBe(true);
    expect(nine.items[0]?.learners).toBe(9);
    const ten = classStatistics(WORKED);
    expect(ten.reliability).not.toBeNull();
    expect(ten.items.every((item) => item.verdict !== null)).toBe(true);
  });
  test('that everyone got right is said to be the same for all', () => {
    const rows = Array.from({ length: 12 }, (_, n) => [1, n % 2]);
    expect(classStatistics(rows).items[0]).toMatchObject({ verdict: 'all-alike', difficulty: 1, discrimination: null });
  });
});

describe('the figures of a class', () => {
  const points = fc.array(fc.array(fc.constantFrom(0, 0.25, 0.5, 1), { minLength: 4, maxLength: 4 }), {
    minLength: 2,
    maxLength: 30,
  });
  test('do not depend on the order of the hand-ins, and stay in their ranges', () => {
    fc.assert(
      fc.property(points, (rows) => {
        const one = classStatistics(rows);
        const other = classStatistics([...rows].reverse());
        expect(one.mean).toBeCloseTo(other.mean ?? NaN, 10);
        expect(one.median).toBe(other.median);
        if (one.reliability !== null) expect(one.reliability).toBeLessThanOrEqual(1 + 1e-9);
        for (const item of one.items)
          if (item.discrimination !== null) expect(Math.abs(item.discrimination)).toBeLessThanOrEqual(1 + 1e-9);
      }),
    );
  });
  test('are empty, not NaN, for an empty class', () => {
    expect(classStatistics([])).toEqual({
      learners: 0,
      mean: null,
      spread: null,
      median: null,
      reliability: null,
      items: [],
    });
    expect(classStatistics([[1, 0]])).toMatchObject({ mean: 0.5, spread: null });
  });
  test('correlation is exact for a line', () => {
    expect(correlation([1, 2, 3, 4], [2, 4, 6, 8])).toBeCloseTo(1, 12);
    expect(correlation([1, 2, 3, 4], [8, 6, 4, 2])).toBeCloseTo(-1, 12);
    expect(correlation([1, 1, 1], [1, 2, 3])).toBeNull();
  });
});
