import { defaultSetup } from '@sim/bed/defaults.ts';
import { warpOf } from '@sim/tile/warp.ts';
import { lippageSeen } from '@sim/view/lippage-seen.ts';
import { expect, test } from 'vitest';

import { drawnFrame } from './view-frames.ts';

const tile = { ...defaultSetup().tile, lengthMm: 100, widthMm: 4, bowWidthMm: 0 };
const line = 'b'.repeat(100);

test('a flat level tile makes no step; before it is laid there is none to measure', () => {
  expect(lippageSeen(drawnFrame([line, line, line, line]), tile)).toBe(0);
  expect(lippageSeen(drawnFrame([line], { tileHeightMm: NaN }), tile)).toBeNaN();
});

test('at half a tile along, a bow makes a step of the whole bow (4f(1−f) at f = 1/2, plain geometry of a parabola)', () => {
  const bowed = { ...tile, bowLengthMm: 1.2 };
  const warp = warpOf(bowed, 100, 4);
  const frame = drawnFrame([line, line, line, line]);
  frame.gapMm.forEach((_, cell) => {
    frame.gapMm[cell] = 3 + warp((cell % 100) - 49.5, Math.floor(cell / 100) - 1.5);
  });
  expect(lippageSeen(frame, bowed)).toBeCloseTo(1.2, 1);
});
