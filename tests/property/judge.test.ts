import fc from 'fast-check';
import { expect, test } from 'vitest';

import { averageContact } from '@sim/judge/limits.ts';
import { judged } from '../reference/rules-checks/jobs.ts';

const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 3, maxLength: 8 });
const verdict = (list: readonly number[]) => judged({ pulls: list.map((coverage) => ({ coverage })) }).verdict;

test('more contact never turns a pass into a fail', () => {
  fc.assert(
    fc.property(shares, (list) => {
      if (verdict(list) === 'pass') expect(verdict(list.map((one) => Math.min(1, one + 0.05)))).toBe('pass');
    }),
  );
});

test('the order of the tiles is nothing to it', () => {
  fc.assert(
    fc.property(shares, (list) => {
      expect(verdict(list.toReversed())).toBe(verdict(list));
    }),
  );
});

test('the average is of contact, and of nothing it is nothing', () => {
  expect(averageContact([])).toBe(0);
  expect(
    averageContact([
      { coverage: 1, backCoatOnly: true, voids: [] },
      { coverage: 0.8, backCoatOnly: false, voids: [] },
    ]),
  ).toBe(0.4);
});
