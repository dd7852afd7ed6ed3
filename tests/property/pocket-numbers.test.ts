import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { standApart, type Spot } from '../../simulations/view/map/mark-pockets.ts';

const PLATE = 19;
const map = { left: 10, top: 5, width: 300, height: 150 };
const spot = fc.tuple(
  fc.double({ min: map.left, max: map.left + map.width, noNaN: true }),
  fc.double({ min: map.top, max: map.top + map.height, noNaN: true }),
);
const apart = (a: Spot, b: Spot): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

describe('numbers of pockets', () => {
  test('twelve on a phone’s map never cover each other, and each stands within five plates of its pocket', () => {
    fc.assert(
      fc.property(fc.array(spot, { minLength: 12, maxLength: 12 }), (spots) => {
        const stand = standApart(spots, PLATE, map);
        stand.forEach((one, n) => {
          expect(apart(one, spots[n]!)).toBeLessThanOrEqual(5 * PLATE + 1e-9);
          for (const other of stand.slice(0, n)) expect(apart(one, other)).toBeGreaterThanOrEqual(PLATE - 1e-9);
        });
      }),
      // Crowds in a corner are the hard ones, and chance makes few.
      { examples: [[Array.from({ length: 12 }, (): Spot => [map.left, map.top])]], numRuns: 2000 },
    );
  });

  test('one whose place no earlier one has taken stays on its pocket', () => {
    fc.assert(
      fc.property(fc.array(spot, { maxLength: 12 }), (spots) => {
        const stand = standApart(spots, PLATE, map);
        stand.forEach((one, n) => {
          if (stand.slice(0, n).every((other) => apart(other, spots[n]!) >= PLATE)) expect(one).toBe(spots[n]);
          else expect(one).not.toBe(spots[n]);
        });
      }),
    );
  });
});
