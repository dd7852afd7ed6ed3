import { levelRim } from '@sim/view/rim.ts';
import { expect, test } from 'vitest';

import { drawnFrame } from './view-frames.ts';

const clear = '.'.repeat(66);
const line = `...${'b'.repeat(60)}...`;
const sheet = [clear, clear, clear, ...Array.from({ length: 30 }, () => line), clear, clear, clear];
const sum = (heights: Float32Array): number => heights.reduce((total, height) => total + height, 0);

test('a needle of squeeze-up becomes a bead about as thick as the gap, and none is lost', () => {
  const frame = drawnFrame(sheet);
  frame.mortarMm[2 * 66 + 30] = 400;
  frame.mortarMm[10 * 66 + 1] = 55;
  const level = levelRim(frame);
  const beside = level.mortarMm.filter((_, cell) => Number.isNaN(level.gapMm[cell]!));
  expect(Math.max(...beside)).toBeLessThanOrEqual(1.7 * frame.tileHeightMm + 1e-6);
  expect(sum(level.mortarMm)).toBeCloseTo(sum(frame.mortarMm), 2);
});

test('what lies under the tile stays where it is', () => {
  const frame = drawnFrame(sheet);
  const level = levelRim(frame);
  const column = Math.round((0.5 - level.originMm[0]) / level.cellMm);
  const row = Math.round((0.5 - level.originMm[1]) / level.cellMm);
  expect(level.gapMm[row * level.columns + column]).toBe(3);
  expect(level.gapMm.filter((gap) => !Number.isNaN(gap))).toHaveLength(60 * 30);
});

test('a comb without a tile is left as it is', () => {
  const frame = drawnFrame(['....'], { tileHeightMm: NaN });
  expect(levelRim(frame)).toBe(frame);
});
