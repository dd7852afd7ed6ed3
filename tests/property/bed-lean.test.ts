/** What a slanted notch changes, and what it does not, each over 300 beds. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { startBed } from '@sim/bed/bed.ts';
import { coverage } from '@sim/bed/contact.ts';
import { leanOf } from '@sim/bed/lean.ts';
import { press, withWeight } from '@sim/bed/press.ts';
import { runBed } from '@sim/bed/run.ts';
import { slide } from '@sim/bed/slide.ts';
import type { BedSetup } from '@sim/bed/types.ts';

import { DRAWS, draws, seed, setupOf } from './bed-draws.ts';
import { check, covered, enlarged, expectOrder, level, pushed, turned } from './bed-order-check.ts';
import { TURNINGS, workedBed, workedTwin } from './bed-twins.ts';

const slanted = (setup: BedSetup): BedSetup => ({ ...setup, trowel: { ...setup.trowel, shape: 'slanted' } });

/** Longer than any hand slides a tile, mm. */
const NO_END_MM = 60;

/** Slide across the ridges until a coverage is reached, mm. */
function slideTo(setup: BedSetup, wanted: number): number {
  const bed = startBed(setup);
  const [action] = setup.actions;
  const applied = withWeight(bed, action?.do === 'press' ? action : { forceN: 0, atX: 0, atY: 0 });
  press(bed, applied);
  if (coverage(bed) >= wanted) return 0;
  let [gone, covers] = [0, coverage(bed)];
  let needed = NO_END_MM;
  // The comb runs along y, so x is across.
  const field = { shiftX: 1, shiftY: 0, turn: 0 };
  slide(bed, { applied, field, pathMm: NO_END_MM, speedMmS: 20 }, (path) => {
    const now = coverage(bed);
    if (now >= wanted) needed = gone + ((path - gone) * (wanted - covers)) / (now - covers);
    [gone, covers] = [path, now];
    return now >= wanted;
  });
  return needed;
}

describe('slanted ridges', { timeout: 300_000 }, () => {
  it('cover no less than square ones of the same area and pitch, pressed or moved, and more where they stand apart', () => {
    let more = 0;
    check((draw) => {
      const setup = setupOf({
        ...enlarged(level(draw), 8),
        pattern: draw.pattern === 'crossed' ? 'straight' : draw.pattern,
      });
      const [square, leaning] = [covered(setup), covered(slanted(setup))];
      expectOrder(square, leaning, 'slanted');
      if (leaning > square + 0.05) more += 1;
    });
    expect(more).toBeGreaterThan(DRAWS / 5);
  });

  it('need no more slide to be 85 % covered, and mostly less', () => {
    let less = 0;
    check((draw) => {
      const setup = setupOf({ ...enlarged(level(draw), 8), pattern: 'straight', directionDeg: 90, slides: false });
      const [square, leaning] = [slideTo(setup, 0.85), slideTo(slanted(setup), 0.85)];
      // Steps of the path end at other places; that is worth a hundredth of a millimetre or two.
      expect(leaning).toBeLessThanOrEqual(square + 0.02);
      if (leaning < 0.8 * square) less += 1;
    });
    expect(less).toBeGreaterThan(DRAWS / 2);
  });

  it('are square ones to the last digit where they lean each its own way or are knocked down', () => {
    check((draw) => {
      const setup = setupOf(draw);
      const { pattern } = setup.comb;
      const mixed = pattern === 'straight' || pattern === 'wobble';
      const comb = { ...setup.comb, flattened: mixed };
      expect(runBed(slanted({ ...setup, comb })).result).toEqual(runBed({ ...setup, comb }).result);
    });
  });

  it('keep the orders: deeper, harder, softer, across', () => {
    check((draw) => {
      const setup = slanted(setupOf({ ...enlarged(level(draw), 8), pattern: 'straight', slides: false }));
      const { trowel, mortar } = setup;
      const here = covered(setup);
      expectOrder(here, covered({ ...setup, trowel: { ...trowel, depthMm: trowel.depthMm * 1.3 } }), 'deeper');
      expectOrder(here, covered(pushed(setup, 1.5)), 'more force');
      expectOrder(covered({ ...setup, mortar: { ...mortar, yieldPa: mortar.yieldPa * 1.5 } }), here, 'stiffer');
      const moved = slanted(setupOf({ ...enlarged(level(draw), 8), pattern: 'straight', slides: true }));
      expectOrder(covered(turned(moved, 0)), covered(turned(moved, 90)), 'across');
    });
  });

  it('know no left or right: mirrored, turned or reversed they cover the same, and lean the way they are turned', () => {
    fc.assert(
      fc.property(draws, (draw) => {
        const setup = slanted(setupOf({ ...draw, pattern: draw.pattern === 'wobble' ? 'wobble' : 'straight' }));
        const bed = workedBed(setup);
        for (const turning of TURNINGS) {
          const twin = workedTwin(setup, turning);
          expect(Math.abs(coverage(twin) - coverage(bed)), turning).toBeLessThan(0.005);
          expect(Math.abs(twin.lean!.driftMm - bed.lean!.driftMm), turning).toBeLessThan(0.1);
        }
        const { comb } = setup;
        const towards = (directionDeg: number): [number, number] =>
          leanOf({ ...setup, comb: { ...comb, directionDeg } })!.towards;
        const [x, y] = towards(comb.directionDeg);
        // A mirrored blade is drawn the other way about.
        const ways: [number, [number, number]][] = [
          [comb.directionDeg + 90, [-y, x]],
          [comb.directionDeg + 180, [-x, -y]],
          [-comb.directionDeg, [-x, y]],
        ];
        for (const [degrees, [toX, toY]] of ways) {
          expect(towards(degrees)[0]).toBeCloseTo(toX, 12);
          expect(towards(degrees)[1]).toBeCloseTo(toY, 12);
        }
      }),
      { seed, numRuns: DRAWS },
    );
  });
});
