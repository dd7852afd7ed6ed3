import { panesOf, placeInPane } from '@sim/view/scene/panes.ts';
import { describe, expect, test } from 'vitest';

describe('panes of a picture', () => {
  test('lie beside each other in a wide one, over each other in a tall one, the first on the left or on top', () => {
    expect(panesOf(800, 400, 1)).toEqual([{ x: 0, y: 0, wide: 800, high: 400 }]);
    expect(panesOf(800, 400, 2)).toEqual([
      { x: 0, y: 0, wide: 400, high: 400 },
      { x: 400, y: 0, wide: 400, high: 400 },
    ]);
    // Counted from the lower edge, as the graphics do.
    expect(panesOf(360, 500, 2)).toEqual([
      { x: 0, y: 250, wide: 360, high: 250 },
      { x: 0, y: 0, wide: 360, high: 250 },
    ]);
    expect(panesOf(300, 300, 0)).toEqual([{ x: 0, y: 0, wide: 300, high: 300 }]);
  });

  test('cover the picture without a gap, and a point is as far inside whichever it falls in', () => {
    for (const [wide, high] of [
      [801, 403],
      [360, 641],
    ] as const) {
      const panes = panesOf(wide, high, 2);
      expect(panes.reduce((area, pane) => area + pane.wide * pane.high, 0)).toBeCloseTo(wide * high, 6);
      const [first] = panes;
      const [acrossA, downA] = placeInPane(0.25 * first!.wide, 0.5 * first!.high, first!);
      const other = high > wide ? [0, first!.high] : [first!.wide, 0];
      const [acrossB, downB] = placeInPane(0.25 * first!.wide + other[0]!, 0.5 * first!.high + other[1]!, first!);
      expect([acrossA, downA]).toEqual([0.25, 0.5]);
      expect(acrossB).toBeCloseTo(0.25, 9);
      expect(downB).toBeCloseTo(0.5, 9);
    }
  });
});
