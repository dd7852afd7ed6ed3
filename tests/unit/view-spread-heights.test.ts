/** Heights for a mesh that draws every second cell: what a mean over a tent keeps, and that a slanting wall comes out straight. */
import { expect, it } from 'vitest';

import { spreadHeights } from '@sim/view/scene/spread-heights.ts';

const spread = (columns: number, rows: number, height: (x: number, y: number) => number): Float32Array => {
  const heights = Float32Array.from({ length: columns * rows }, (_, n) => height(n % columns, Math.floor(n / columns)));
  const into = new Float32Array(heights.length);
  spreadHeights(heights, columns, rows, into);
  return into;
};

it('a plane stays a plane inside, and a level field as it is up to its edge', () => {
  const plane = spread(9, 7, (x, y) => 2 + 0.5 * x - 0.25 * y);
  for (let y = 1; y < 6; y += 1)
    for (let x = 1; x < 8; x += 1) expect(plane[9 * y + x]).toBeCloseTo(2 + 0.5 * x - 0.25 * y, 5);
  for (const height of spread(5, 4, () => 3)) expect(height).toBe(3);
});

it('mortar is neither added nor lost over the field', () => {
  const hill = spread(9, 9, (x, y) => (x === 4 && y === 3 ? 16 : 0));
  expect(hill.reduce((sum, height) => sum + height, 0)).toBeCloseTo(16, 5);
  expect(hill[9 * 3 + 4]).toBe(4);
});

it('a wall aslant to the grid, read at every second cell, stands within half a cell of its line', () => {
  // A step at x = 10 + y/4, the cell that it crosses filled in part, as the comb leaves it.
  const side = 41;
  const heights = spread(side, side, (x, y) => Math.min(1, Math.max(0, 10 + y / 4 - x + 0.5)));
  for (let y = 2; y < 38; y += 2) {
    let filled = 0;
    for (let x = 0; x < 40; x += 2) filled += 2 * heights[side * y + x]!;
    expect(Math.abs(filled - (11 + y / 4))).toBeLessThan(0.5);
  }
});
