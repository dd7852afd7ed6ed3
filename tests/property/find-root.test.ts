/** The roots of rising functions whose roots are known: the way to them may not matter, nor cost more than promised. */
import fc from 'fast-check';
import { expect, test } from 'vitest';

import { rootOfRising, rootOfSmooth } from '@sim/numbers/find-root.ts';

import { seed } from './bed-draws.ts';

const RUNS = { seed, numRuns: 300 };
const HALVINGS = 44;
const HIGH = 5;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** How often a function is looked at. */
function counted(f: (x: number) => number): { f: (x: number) => number; looks: () => number } {
  let looks = 0;
  return {
    f: (x) => {
      looks += 1;
      return f(x);
    },
    looks: () => looks,
  };
}

test('a smooth function: the root to the last bracket, within two dozen looks', () => {
  fc.assert(
    fc.property(between(0, HIGH), between(0.01, 100), between(0, 10), (root, slope, bend) => {
      const { f, looks } = counted((x) => slope * (x - root) + bend * (x * x * x - root * root * root));
      expect(Math.abs(rootOfSmooth(f, 0, HIGH, HALVINGS) - root)).toBeLessThan(1e-12);
      expect(looks()).toBeLessThanOrEqual(24);
      expect(Math.abs(rootOfRising(f, 0, HIGH, HALVINGS) - root)).toBeLessThan(1e-12);
    }),
    RUNS,
  );
});

test('a function flat, then kinked, then nearly level: still the root', () => {
  fc.assert(
    fc.property(between(0, 2), between(0.05, 0.9), (from, load) => {
      // The load of a ridge slid across: nothing up to a widening, then 1 − (from/R)².
      const f = (x: number): number => (x <= from ? 0 : 1 - (from * from) / (x * x)) - load;
      fc.pre(from > 0.01 && f(HIGH) > 0);
      expect(Math.abs(rootOfSmooth(f, 0, HIGH, HALVINGS) - from / Math.sqrt(1 - load))).toBeLessThan(1e-11);
    }),
    RUNS,
  );
});

test('a jump is closed in on with at most eight looks more than halving takes, ends beyond are told by the end', () => {
  fc.assert(
    fc.property(between(0, HIGH), between(1e-6, 1e6), between(1e-6, 1e6), (at, under, over) => {
      const { f, looks } = counted((x) => (x < at ? -under : over));
      expect(Math.abs(rootOfSmooth(f, 0, HIGH, HALVINGS) - at)).toBeLessThan(1e-12);
      expect(looks()).toBeLessThanOrEqual(HALVINGS + 8);
      expect(rootOfSmooth(() => under, 0, HIGH)).toBe(0);
      expect(rootOfSmooth(() => -under, 0, HIGH)).toBe(HIGH);
    }),
    RUNS,
  );
});
