import { levelRim } from '@sim/view/rim.ts';
import { expect, test } from 'vitest';

import { drawnFrame } from './view-frames.ts';

test('squeeze-up is spread over the joint and none is lost', () => {
  const frame = drawnFrame(['........', '........', '..bbbb..', '..bbbb..', '........', '........']);
  frame.mortarMm[2 * 8 + 1] = 8;
  frame.mortarMm[1 * 8 + 3] = 6;
  const level = levelRim(frame);
  expect([level.mortarMm[2 * 8]!, level.mortarMm[2 * 8 + 1]!]).toEqual([4, 4]);
  expect([level.mortarMm[3]!, level.mortarMm[1 * 8 + 3]!]).toEqual([3, 3]);
  const sum = (heights: Float32Array): number => heights.reduce((total, height) => total + height, 0);
  expect(sum(level.mortarMm)).toBeCloseTo(sum(frame.mortarMm), 5);
  expect(level.mortarMm[2 * 8 + 2]).toBe(frame.mortarMm[2 * 8 + 2]);
});

test('a comb without a tile is left as it is', () => {
  const frame = drawnFrame(['....'], { tileHeightMm: NaN });
  expect(levelRim(frame)).toBe(frame);
});
