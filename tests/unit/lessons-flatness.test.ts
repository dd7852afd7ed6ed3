import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { floorLine, layStraightedge, worstUnder } from '@site/islands/figures/flatness.ts';
import { lumpAtCorner, spreadVoids } from '@site/islands/figures/void-plate.ts';

const flat = (heights: number[]) => ({ stepMm: 10, heights });

describe('a straightedge on a floor', () => {
  it('bridges a dip and reads its whole depth', () => {
    const read = layStraightedge(flat([0, 0, -2, -5, -2, 0, 0]), 0, 6);
    expect(read.deepestMm).toBeCloseTo(5, 9);
    expect(read.deepestAt).toBe(3);
  });
  it('reads nothing on a plane, sloping or not', () => {
    expect(layStraightedge(flat([0, 1, 2, 3, 4]), 0, 4).deepestMm).toBeCloseTo(0, 9);
  });
  it('rests on a hump and reads from there', () => {
    // A hump of 4 in the middle: the bar lies on it and on one side's end, so the far end hangs.
    const read = layStraightedge(flat([0, 0, 4, 0, 0]), 0, 4);
    expect(read.rests).toContain(2);
    expect(read.deepestMm).toBeGreaterThanOrEqual(4);
  });
  it('never sinks into the floor', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: 4, maxLength: 60 }),
        (heights) => {
          const { rests, restHeights } = layStraightedge(flat(heights), 0, heights.length - 1);
          const slope = (restHeights[1] - restHeights[0]) / (rests[1] - rests[0]);
          heights.forEach((height, i) =>
            expect(restHeights[0] + slope * (i - rests[0])).toBeGreaterThanOrEqual(height - 1e-9),
          );
        },
      ),
    );
  });
  it('finds the worst place, and a longer bar never finds less of a broad dip', () => {
    const line = floorLine({ lengthMm: 4000, dipMm: 5, humpMm: 0, markMm: 0 });
    const short = worstUnder(line, 600).gapMm;
    const long = worstUnder(line, 3000).gapMm;
    expect(long).toBeCloseTo(5, 1);
    expect(short).toBeLessThan(long);
  });
});

describe('voids on a back', () => {
  /** Area of a path of half-circle arcs and of a quarter disc, by their radii. */
  const radii = (path: string): number[] => [...path.matchAll(/a([\d.]+) /g)].map((match) => Number(match[1]));
  it.each([0.05, 0.1, 0.15, 0.2])('spread voids hold a share of %d', (share) => {
    const [radius = 0] = radii(spreadVoids(share));
    expect((25 * Math.PI * radius * radius) / 10_000).toBeCloseTo(share, 3);
  });
  it('a lump at the corner holds its share', () => {
    const radius = Number(/A([\d.]+)/.exec(lumpAtCorner(0.2))?.[1]);
    expect((Math.PI * radius * radius) / 4 / 10_000).toBeCloseTo(0.2, 3);
  });
});
