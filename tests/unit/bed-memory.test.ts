import { makeGrid } from '@sim/bed/grid.ts';
import { layOut } from '@sim/bed/layout.ts';
import { defaultSetup } from '@sim/bed/defaults.ts';
import { expect, test } from 'vitest';

/** The budget for the state of a cell, bytes (see MODEL.md). */
const MOST = 40;

test('all arrays of a bed together take at most 40 bytes a cell', () => {
  const { tile, cellMm } = defaultSetup();
  const grid = makeGrid(layOut(tile, cellMm));
  const arrays = Object.values(grid).filter((value) => ArrayBuffer.isView(value));
  const bytes = arrays.reduce((sum, array) => sum + array.byteLength, 0);
  expect(arrays.length).toBeGreaterThan(5);
  expect(bytes / (grid.columns * grid.rows)).toBeLessThanOrEqual(MOST);
});
