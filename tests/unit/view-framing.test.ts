import { eyePlace, framing, HALF_VIEW_DEG, namedView, type Orbit } from '@sim/view/scene/orbit.ts';
import { slabPlan } from '@sim/view/scene/slab-plan.ts';
import fc from 'fast-check';
import { PerspectiveCamera, Vector3 } from 'three';
import { describe, expect, test } from 'vitest';

type Place = [x: number, y: number, height: number];

/** Where a place falls in the picture, by the drawing library's own camera; the picture's edges are at −1 and 1. */
function seen(orbit: Orbit, aspect: number, [x, y, height]: Place): Vector3 {
  const camera = new PerspectiveCamera(2 * HALF_VIEW_DEG, aspect, 1, 100_000);
  camera.position.set(...eyePlace(orbit));
  camera.lookAt(orbit.target[0], orbit.target[2], -orbit.target[1]);
  camera.updateMatrixWorld();
  return new Vector3(x, height, -y).project(camera);
}

function slabCorners(lengthMm: number, widthMm: number): Place[] {
  const { left, right, near, far, deep } = slabPlan(lengthMm, widthMm);
  return [left, right].flatMap((x) => [near, far].flatMap((y) => [-deep, 0].map((height): Place => [x, y, height])));
}

const sizes = fc.tuple(fc.integer({ min: 100, max: 1500 }), fc.integer({ min: 100, max: 1000 }));

describe('what a view frames', () => {
  test('the whole slab stands in the picture of the bench, low, from the side and of both faces, whatever its shape', () => {
    fc.assert(
      fc.property(sizes, fc.double({ min: 0.35, max: 3, noNaN: true }), ([lengthMm, widthMm], aspect) => {
        for (const name of ['bench', 'low', 'side', 'open'] as const) {
          const orbit = namedView(name, { lengthMm, widthMm, cut: null, turned: false }, aspect);
          expect(orbit.target[2]).toBe(0);
          const places = slabCorners(lengthMm, widthMm).map((corner) => seen(orbit, aspect, corner));
          const most = Math.max(...places.flatMap(({ x, y }) => [Math.abs(x), Math.abs(y)]));
          expect(most).toBeLessThanOrEqual(1);
          // In the middle both ways: as much room above as below, and to the left as to the right.
          for (const axis of ['x', 'y'] as const) {
            const along = places.map((place) => place[axis]);
            expect(Math.max(...along) + Math.min(...along)).toBeCloseTo(0, 3);
          }
          // As near as that allows: something touches the margin.
          expect(most).toBeGreaterThan(0.93);
        }
      }),
    );
  });

  test('of a cut bed the part that is left is framed, and from above a tile turned over with its bed', () => {
    const shape = { lengthMm: 600, widthMm: 300, turned: false };
    const { left, right, near, far, deep } = slabPlan(600, 300);
    const corners = (x: number[], y: number[]): Place[] =>
      x.flatMap((one) => y.flatMap((two) => [-deep, 0].map((height): Place => [one, two, height])));
    const widest = (orbit: Orbit, places: Place[]): number =>
      Math.max(...places.map((place) => seen(orbit, 1.6, place)).flatMap(({ x, y }) => [Math.abs(x), Math.abs(y)]));
    for (const name of ['low', 'side', 'open'] as const) {
      const along = namedView(name, { ...shape, cut: { along: 'length', atMm: 40 } }, 1.6);
      expect(widest(along, corners([left, right], [40, far]))).toBeCloseTo(0.96, 2);
      const across = namedView(name, { ...shape, cut: { along: 'width', atMm: -60 } }, 1.6);
      expect(widest(across, corners([left, -60], [near, far]))).toBeCloseTo(0.96, 2);
      // The tile turned over is not cut with its bed.
      const turned = namedView(name, { ...shape, turned: true, cut: { along: 'width', atMm: -60 } }, 1.6);
      expect(widest(turned, corners([left, right], [near, far]))).toBeCloseTo(0.96, 2);
    }
    const above = namedView('above', { ...shape, cut: null, turned: true }, 1.6);
    expect(
      widest(
        above,
        [left, right].flatMap((x) => [near, far].map((y): Place => [x, y, 0])),
      ),
    ).toBeCloseTo(0.96, 2);
  });

  test('a near view of a cut looks at the cut, wherever it stands, and shows a few ridges of a large tile', () => {
    for (const cut of [
      { along: 'length', atMm: 90 },
      { along: 'width', atMm: -200 },
    ] as const) {
      const orbit = namedView('cut', { lengthMm: 1200, widthMm: 600, cut, turned: false }, 1.6);
      const middle: Place = cut.along === 'length' ? [0, 90, 0] : [-200, 0, 0];
      const { x, y } = seen(orbit, 1.6, middle);
      expect(Math.hypot(x, y)).toBeCloseTo(0, 6);
      // 100 mm either side of the middle are about what fits.
      const beside: Place = cut.along === 'length' ? [100, 90, 0] : [-200, 100, 0];
      expect(Math.abs(seen(orbit, 1.6, beside).x)).toBeGreaterThan(0.6);
    }
  });

  test('a square seen from straight above fills the picture to its margin, in the middle', () => {
    const square: Place[] = [
      [10, 20, 0],
      [110, 20, 0],
      [110, 120, 0],
      [10, 120, 0],
    ];
    const orbit = framing(0, 89.999, square, 1);
    expect(orbit.target[0]).toBeCloseTo(60, 1);
    expect(orbit.target[1]).toBeCloseTo(70, 1);
    // Half the square over the tangent of half the angle, less the margin of 4 %.
    expect(orbit.distanceMm).toBeCloseTo(50 / Math.tan((HALF_VIEW_DEG * Math.PI) / 180) / 0.96, 0);
  });
});
