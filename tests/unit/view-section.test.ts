import { CELL_STATE } from '@sim/bed/types.ts';
import { figuresOf, profileOf, stretches, wallIn } from '@sim/view/section/profile.ts';
import { sectionScale } from '@sim/view/section/scale.ts';
import { describe, expect, test } from 'vitest';

import { drawnFrame } from './view-frames.ts';

describe('section', () => {
  const frame = drawnFrame(['bbbbbbbb', 'bbttboob', 'bbbbbbbb']);

  test('reads the row the plane passes through, and the column the other way', () => {
    const along = profileOf(frame, { along: 'length', atMm: 0.2 });
    expect([...along.state]).toEqual([3, 3, 2, 2, 3, 1, 1, 3]);
    expect(along.placeMm[0]).toBe(-3.5);
    const across = profileOf(frame, { along: 'width', atMm: -1.5 });
    expect([...across.state]).toEqual([3, CELL_STATE.trapped, 3]);
  });

  test('runs of one state, edge to edge', () => {
    const runs = stretches(profileOf(frame, { along: 'length', atMm: 0 }));
    expect(runs.map(({ state, fromMm, toMm }) => [state, fromMm, toMm])).toEqual([
      [3, -4, -2],
      [2, -2, 0],
      [3, 0, 1],
      [1, 1, 3],
      [3, 3, 4],
    ]);
  });

  test('figures: gap, ridges, air and the bonded share of the line', () => {
    const figures = figuresOf(profileOf(frame, { along: 'length', atMm: 0 }));
    expect(figures.gap).toEqual({ mean: 3, min: 3, max: 3 });
    expect(figures.ridges).toBe(3);
    expect(figures.bondedShare).toBe(0.5);
    expect(figures.openRuns).toBe(1);
    expect(figures.trappedRuns).toBe(1);
    expect(figures.widestAirMm).toBe(2);
  });

  test('mortar is never drawn through the tile', () => {
    const over = drawnFrame(['bbb']);
    over.mortarMm.fill(9);
    expect([...profileOf(over, { along: 'length', atMm: 0 }).mortarMm]).toEqual([3, 3, 3]);
  });

  test('a ridge’s wall stands where the mortar of its last cell reaches at full height; a slope has none', () => {
    const ridge = (heights: number[]): ReturnType<typeof wallIn> => {
      const combed = drawnFrame(['.'.repeat(heights.length)]);
      combed.mortarMm.set(heights);
      return wallIn(profileOf(combed, { along: 'length', atMm: 0 }));
    };
    const square = ridge([0, 1, 4, 4, 3, 0]);
    expect(square(1, -1)).toEqual({ offMm: 0.25, topMm: 4 });
    expect(square(4, 1)).toEqual({ offMm: 0.25, topMm: 4 });
    // From wall to wall as much mortar as in the four cells.
    expect(4 * (4 + 0.25 - (1 + 0.25))).toBe(1 + 4 + 4 + 3);
    const slope = ridge([0, 1, 2, 3, 2, 1, 0]);
    expect([slope(1, -1), slope(5, 1)]).toEqual([null, null]);
    expect(ridge([0, 2, 0])(1, 1)).toBeNull();
  });

  test('heights are drawn true, or by a whole factor that is told', () => {
    const view = { profile: profileOf(frame, { along: 'length', atMm: 0 }), thicknessMm: 6 };
    const scale = sectionScale(view, 800, 1600);
    expect(scale.taller).toBe(1);
    expect(scale.x(1) - scale.x(0)).toBe(100);
    expect(scale.y(0) - scale.y(1)).toBe(100);
    const tall = sectionScale(view, 80, 800);
    expect(Number.isInteger(tall.taller)).toBe(true);
    expect((tall.y(0) - tall.y(1)) / (tall.x(1) - tall.x(0))).toBeCloseTo(tall.taller, 12);
    expect(tall.y(9)).toBeGreaterThanOrEqual(0);
  });
});
