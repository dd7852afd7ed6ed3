import { CELL_STATE } from '@sim/bed/types.ts';
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

test('out of a thin gap it curls up into a bead, and does not run flat over the floor; none is lost', () => {
  const frame = drawnFrame(sheet, { tileHeightMm: 0.5 });
  // 60 mm² of cross-section along every edge.
  const sides: [number, number][] = [
    ...Array.from({ length: 60 }, (_, n): [number, number][] => [[n + 3, 2], [n + 3, 33]]).flat(),
    ...Array.from({ length: 30 }, (_, n): [number, number][] => [[2, n + 3], [63, n + 3]]).flat(),
  ]; // prettier-ignore
  for (const [column, row] of sides) frame.mortarMm[row * 66 + column] = 60;
  const level = levelRim(frame);
  const middle = Math.round(-level.originMm[1] / level.cellMm) * level.columns;
  const before = Math.round((frame.originMm[0] - level.originMm[0]) / level.cellMm) + 3;
  const bead = Array.from(level.mortarMm.subarray(middle, middle + before));
  const wide = bead.filter((height) => height > 0.02).length * frame.cellMm;
  expect(wide).toBeGreaterThan(1.5 * Math.max(...bead));
  expect(wide).toBeLessThan(4 * Math.max(...bead));
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

test('the bead goes on round the corners, none in a needle, and none is lost', () => {
  const frame = drawnFrame(sheet);
  for (let n = 3; n < 63; n++) frame.mortarMm[2 * 66 + n] = 12;
  for (let n = 3; n < 33; n++) frame.mortarMm[n * 66 + 2] = 12;
  frame.mortarMm[66 + 1] = 90;
  const level = levelRim(frame);
  const height = (x: number, y: number): number => {
    const column = Math.round((x - level.originMm[0]) / level.cellMm);
    return level.mortarMm[Math.round((y - level.originMm[1]) / level.cellMm) * level.columns + column]!;
  };
  const [left, near] = [frame.originMm[0] + 2, frame.originMm[1] + 2];
  // Beside the corner as beside the edges, and no jump of more than the bead's own height on the way round.
  expect(height(left, near)).toBeGreaterThan(0.4 * height(left, near + 14));
  const beside = level.mortarMm.filter((_, cell) => Number.isNaN(level.gapMm[cell]!));
  expect(Math.max(...beside)).toBeLessThanOrEqual(1.1 * 1.7 * frame.tileHeightMm);
  expect(sum(level.mortarMm)).toBeCloseTo(sum(frame.mortarMm), 2);
});

test('what came up in the joints of a sheet stands level in them, in no needle, and none is lost', () => {
  // A joint runs through the very middle, so that the middle row and column hold no tile.
  const pieces = `...${'b'.repeat(28)}${'j'.repeat(4)}${'b'.repeat(28)}...`;
  const joint = `...${'j'.repeat(60)}...`;
  const frame = drawnFrame([
    clear, clear, clear, ...Array.from({ length: 14 }, () => pieces), joint, joint,
    ...Array.from({ length: 14 }, () => pieces), clear, clear, clear,
  ]); // prettier-ignore
  const before = sum(frame.mortarMm);
  for (let n = 5; n < 30; n += 8) frame.mortarMm[n * 66 + 32] = 40;
  for (let n = 5; n < 60; n += 8) frame.mortarMm[17 * 66 + n] = 40;
  const level = levelRim(frame);
  const inJoints = level.mortarMm.filter(
    (_, cell) => level.state[cell] === CELL_STATE.joint || level.state[cell] === CELL_STATE.outside,
  );
  expect(Math.max(...inJoints)).toBeLessThan(10);
  expect(sum(level.mortarMm)).toBeCloseTo(before + 11 * 40, 2);
});
