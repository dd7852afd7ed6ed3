/** A surface read with a straightedge against the bow and twist it was read from, and against ISO 10545-2's measures. */
import { defaultSetup } from '@sim/bed/defaults.ts';
import { runBed } from '@sim/bed/run.ts';
import type { BedSetup, SurfaceReadings } from '@sim/bed/types.ts';
import { smoothCurve, smoothSurface } from '@sim/tile/smooth.ts';
import { isoMeasures } from '@sim/tile/iso-measures.ts';
import { type Warp, warpOf } from '@sim/tile/warp.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const LONG = 600;
const WIDE = 300;
const shape = { bowLengthMm: 1.2, bowWidthMm: -0.4, twistMm: 0.9 };
const evenly = (count: number): number[] => Array.from({ length: count }, (_, n) => (2 * n) / (count - 1) - 1);

/** What a straightedge and feelers read of a surface: lines, each over its own two ends. */
function linesOf(surface: Warp, count: number): SurfaceReadings {
  const line = (place: (s: number) => [number, number]): number[] => {
    const at = (s: number): number => surface(...place(s));
    return evenly(count).map((s) => at(s) - (at(-1) * (1 - s)) / 2 - (at(1) * (1 + s)) / 2);
  };
  return {
    alongMm: line((s) => [(s * LONG) / 2, 0]),
    acrossMm: line((s) => [0, (s * WIDE) / 2]),
    diagonalsMm: [line((s) => [(s * LONG) / 2, (s * WIDE) / 2]), line((s) => [(s * LONG) / 2, (-s * WIDE) / 2])],
  };
}

const gridOf = (surface: Warp, columns: number, rows: number): SurfaceReadings => ({
  gridMm: evenly(rows).map((v) => evenly(columns).map((u) => surface((u * LONG) / 2, (v * WIDE) / 2))),
});

const places = fc.record({
  u: fc.double({ min: -1, max: 1, noNaN: true }),
  v: fc.double({ min: -1, max: 1, noNaN: true }),
});

describe('ISO 10545-2: departures from the plane through three corners', () => {
  // Definitions of the standard on a surface known in closed form: a bow's middle stands its bow over the ends.
  it('reads a bow and a twist as what they are', () => {
    const { centreMm, edgesMm, twistMm } = isoMeasures(warpOf(shape, LONG, WIDE), LONG, WIDE);
    expect(twistMm).toBeCloseTo(0.9, 12);
    // In the middle the plane through three corners stands half the twist's quarter below, three corners' mean.
    expect(centreMm).toBeCloseTo(1.2 - 0.4 + 0.9 / 4, 12);
    expect(edgesMm[0]).toBeCloseTo(1.2, 12);
    expect(edgesMm[2]).toBeCloseTo(-0.4, 12);
    expect(edgesMm[1]).toBeCloseTo(1.2 + 0.9 / 2, 12);
    expect(edgesMm[3]).toBeCloseTo(-0.4 + 0.9 / 2, 12);
  });

  it.each([
    ['three readings a line', linesOf(warpOf(shape, LONG, WIDE), 3)],
    ['nine readings a line', linesOf(warpOf(shape, LONG, WIDE), 9)],
    ['a grid of 3 × 3', gridOf(warpOf(shape, LONG, WIDE), 3, 3)],
    ['a grid of 5 × 4', gridOf(warpOf(shape, LONG, WIDE), 5, 4)],
  ])('gives the same measures from %s', (_name, readings) => {
    const read = isoMeasures(warpOf({ bowLengthMm: 0, bowWidthMm: 0, readings }, LONG, WIDE), LONG, WIDE);
    const was = isoMeasures(warpOf(shape, LONG, WIDE), LONG, WIDE);
    expect(read.centreMm).toBeCloseTo(was.centreMm, 10);
    expect(read.twistMm).toBeCloseTo(was.twistMm, 10);
    read.edgesMm.forEach((edge, n) => expect(edge).toBeCloseTo(was.edgesMm[n]!, 10));
  });

  it('and the same surface everywhere, rim and all', () => {
    const was = warpOf(shape, LONG, WIDE);
    for (const readings of [linesOf(was, 7), gridOf(was, 6, 4)]) {
      const read = warpOf({ bowLengthMm: 0, bowWidthMm: 0, readings }, LONG, WIDE);
      fc.assert(
        fc.property(places, ({ u, v }) => {
          const [x, y] = [(u * LONG) / 2, (v * WIDE) / 2];
          expect(read(x, y)).toBeCloseTo(was(x, y), 9);
        }),
        { numRuns: 300 },
      );
    }
  });

  it('a twist shows in the diagonals alone', () => {
    const was = warpOf({ bowLengthMm: 0, bowWidthMm: 0, twistMm: 1 }, LONG, WIDE);
    const { diagonalsMm } = linesOf(was, 5);
    const read = warpOf({ bowLengthMm: 0, bowWidthMm: 0, readings: { diagonalsMm: diagonalsMm! } }, LONG, WIDE);
    expect(isoMeasures(read, LONG, WIDE).twistMm).toBeCloseTo(1, 10);
    expect(isoMeasures(read, LONG, WIDE).edgesMm[0]).toBeCloseTo(0, 10);
  });
});

describe('a curve through any readings', () => {
  const readings = fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 2, maxLength: 12 });

  it('passes through every one of them and stays near them between', () => {
    fc.assert(
      fc.property(readings, fc.double({ min: -1, max: 1, noNaN: true }), (heights, place) => {
        const curve = smoothCurve(heights);
        heights.forEach((height, n) => expect(curve((2 * n) / (heights.length - 1) - 1)).toBeCloseTo(height, 9));
        const [low, high] = [Math.min(...heights), Math.max(...heights)];
        expect(curve(place)).toBeGreaterThanOrEqual(low - 0.5 * (high - low) - 1e-9);
        expect(curve(place)).toBeLessThanOrEqual(high + 0.5 * (high - low) + 1e-9);
      }),
      { numRuns: 300 },
    );
  });

  it('has no kink at a reading, and a surface none along either axis', () => {
    const curve = smoothCurve([0, 1, 0.2, 0.7]);
    const surface = smoothSurface([
      [0, 1, 0.2],
      [0.3, -0.4, 0.9],
      [0.1, 0.6, 0],
    ]);
    const step = 1e-6;
    expect((curve(1 / 3 + step) - curve(1 / 3)) / step).toBeCloseTo((curve(1 / 3) - curve(1 / 3 - step)) / step, 4);
    expect((surface(step, 0.3) - surface(0, 0.3)) / step).toBeCloseTo(
      (surface(0, 0.3) - surface(-step, 0.3)) / step,
      4,
    );
    expect((surface(0.3, step) - surface(0.3, 0)) / step).toBeCloseTo(
      (surface(0.3, 0) - surface(0.3, -step)) / step,
      4,
    );
  });

  it('leaves neither height nor slope in the mean plane of a surface', () => {
    const read = warpOf(
      {
        bowLengthMm: 0,
        bowWidthMm: 0,
        readings: {
          gridMm: [
            [0, 1, 3],
            [2, 2.5, 4.2],
          ],
        },
      },
      LONG,
      WIDE,
    );
    let [mean, slope, count] = [0, 0, 0];
    for (let u = -0.995; u < 1; u += 0.01)
      for (let v = -0.995; v < 1; v += 0.01) {
        mean += read((u * LONG) / 2, (v * WIDE) / 2);
        slope += u * read((u * LONG) / 2, (v * WIDE) / 2);
        count += 1;
      }
    expect(mean / count).toBeCloseTo(0, 4);
    expect(slope / count).toBeCloseTo(0, 4);
  });
});

describe('the bed under a surface that was read', () => {
  const onTile = (tile: object, floor: object = {}): BedSetup => {
    const setup = defaultSetup();
    Object.assign(setup.tile, { lengthMm: LONG / 2, widthMm: WIDE / 2 }, tile);
    Object.assign(setup.floor, floor);
    setup.trowel = { ...setup.trowel, widthMm: 6.35, depthMm: 6.35, toothMm: 6.35 };
    setup.actions = [{ do: 'press', forceN: 150, atX: 0, atY: 0 }];
    return setup;
  };
  const run = (setup: BedSetup) => runBed(setup).result;

  // The surfaces agree to rounding, which decides between two fronts that meet: the coverage to the third place.
  it('is that under the same bow told by its height', () => {
    const told = run(onTile({ bowLengthMm: 1 }));
    const read = run(onTile({ readings: { alongMm: [0, 0.75, 1, 0.75, 0] } }));
    expect(read.coverage).toBeCloseTo(told.coverage, 3);
    expect(read.tileHeightMm).toBeCloseTo(told.tileHeightMm, 2);
  });

  it('a hump read on the floor is a hollow back turned over', () => {
    const hump = run(onTile({}, { readings: { alongMm: [0, 0.75, 1, 0.75, 0] } }));
    const back = run(onTile({ bowLengthMm: -1 }));
    expect(hump.coverage).toBeCloseTo(back.coverage, 3);
  });

  it('and a dip under one corner leaves that corner thin', () => {
    const dipped = onTile(
      {},
      {
        readings: {
          gridMm: [
            [0, 0, 0, 0],
            [0, 0, 0, 0],
            [0, 0, -0.5, -1],
            [0, 0, -1, -2],
          ],
        },
      },
    );
    const pressed = (setup: BedSetup) => run({ ...setup, actions: [{ do: 'press', forceN: 200, atX: 0, atY: 0 }] });
    const dip = pressed(dipped);
    expect(dip.corners[3]).toBeLessThan(Math.min(dip.corners[0], dip.corners[1], dip.corners[2]) - 0.05);
    expect(dip.corners[3]).toBeLessThan(pressed(onTile({})).corners[3] - 0.15);
  });
});
