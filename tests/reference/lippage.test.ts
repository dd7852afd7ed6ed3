import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { edgeHeight, lippageShare, stepAt } from '@sim/tile/lippage.ts';

describe('lippage of a smooth bow', () => {
  // Geometry of a parabola, worked by hand; a practitioner's case asks whether thirds cure a bowed plank.
  it.each([
    [0.5, 1],
    [1 / 3, 8 / 9],
    [0.25, 0.75],
    [0.2, 0.64],
    [0.1, 0.36],
    [0, 0],
  ])('offset by %d of the length brings %d of the bow', (offset, share) => {
    expect(lippageShare(offset)).toBeCloseTo(share, 12);
  });

  it('is the greatest step found anywhere along the edge', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (offset, bow) => {
          const places = Array.from({ length: 2001 }, (_, i) => i / 2000);
          const most = Math.max(
            ...places.map((place) => Math.abs(stepAt(place, offset, bow))),
            Math.abs(stepAt(offset, offset, bow)),
          );
          expect(most).toBeCloseTo(lippageShare(offset) * Math.abs(bow), 9);
        },
      ),
    );
  });

  it('is the same whichever way the row is shifted, and an edge is highest in its middle', () => {
    expect(lippageShare(0.3)).toBeCloseTo(lippageShare(0.7), 12);
    expect(edgeHeight(0.5, 1.2)).toBeCloseTo(1.2, 12);
    expect([edgeHeight(0, 1.2), edgeHeight(1, 1.2)]).toEqual([0, 0]);
  });
});
