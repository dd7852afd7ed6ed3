import { defaultSetup } from '@sim/bed/defaults.ts';
import { trowelRest } from '@site/islands/bench/trowel-rest.ts';
import { expect, test } from 'vitest';

const tile = (lengthMm: number, widthMm: number) => ({ ...defaultSetup().tile, lengthMm, widthMm });

test.each([0, 30, 90, 135, 179])(
  'drawn at %i°, the trowel rests past the edge of the tile and on no mortar',
  (degrees) => {
    for (const [long, wide] of [
      [610, 305],
      [305, 610],
      [1200, 200],
      [152, 76],
      [50, 50],
    ] as const) {
      const { x, y } = trowelRest(tile(long, wide), degrees);
      expect(Math.max(Math.abs(x) - long / 2, Math.abs(y) - wide / 2)).toBeGreaterThan(0);
      expect(Math.hypot(x, y)).toBeLessThan(Math.hypot(long, wide) / 2 + 20);
    }
  },
);

test('it rests before a bed larger than its blade, and behind a smaller one that it would hide', () => {
  expect(trowelRest(tile(610, 305), 90).y).toBeLessThan(-152);
  expect(trowelRest(tile(108, 108), 90).y).toBeGreaterThan(54);
});
