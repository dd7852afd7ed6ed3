/**
 * Leaning ridges. That a load straight down reaches only the part of a ridge under its own top is the effective width of
 * an eccentrically loaded footing (Meyerhof 1953, from memory); how much of that holds for a ridge that sticks to both
 * plates is found here by a limit analysis, which first has to give back the load of an upright strip.
 */
import { describe, expect, it } from 'vitest';

import { startBed } from '@sim/bed/bed.ts';
import { coverage } from '@sim/bed/contact.ts';
import { easedBy, leanOf, leanShare } from '@sim/bed/lean.ts';
import { press } from '@sim/bed/press.ts';
import { coverageAfterSlide, coverageUnder, pressedAt, pressureAt } from '@sim/bed/ridge-law.ts';
import { runBed } from '@sim/bed/run.ts';
import { meanBedMm, pitchMm, ridgeHeightMm } from '@sim/trowel/notch.ts';
import { SLANT } from '@sim/trowel/profile.ts';

import { type RidgeBench, ridgeSetup } from './bed-benches.ts';
import { limitOf } from './limit-analysis.ts';

/** Load of an upright strip over yield stress and gap (Hill's slip lines with their end term, see bed-exact.test.ts). */
const strip = (width: number): number => 1.5 * width + (width * width) / 2;
/** Half covered, so that nothing props the ridges. */
const eased = (width: number, lean: number): number =>
  strip(width) - easedBy(lean, 0.5, 1.5 * width, (width * width) / 2);

describe('one ridge that leans', { timeout: 120_000 }, () => {
  const widths = [1, 1.3, 2, 3];
  const upright = new Map(widths.map((width) => [width, limitOf({ width, lean: 0, held: true }).load]));

  it.each(widths)('upright, %d gaps wide, the limit analysis gives the strip’s load within 4 %%', (width) => {
    expect(Math.abs(upright.get(width)! / strip(width) - 1)).toBeLessThan(0.04);
  });

  describe.each(widths)('%d gaps wide', (width) => {
    it.each([0.3, 0.45, 0.6])('leaning by %d of its width', (lean) => {
      const free = limitOf({ width, lean });
      const held = limitOf({ width, lean, held: true });
      const found = free.load / upright.get(width)!;
      const said = eased(width, lean) / strip(width);
      expect(Math.abs(said - found)).toBeLessThan(lean > 0.5 ? 0.07 : 0.05);
      // Safe below: the part under its own top by itself. Above: squeezed as if upright.
      expect(said).toBeGreaterThan(strip((1 - lean) * width) / strip(width));
      expect(said).toBeLessThan(1);
      // Most of it is lost when the tile can't go aside.
      expect(held.load).toBeGreaterThan(1.2 * free.load);
      expect(held.aside).toBe(0);
    });
  });

  it('as fresh ridges lean, the tile goes aside about as far as it comes down', () => {
    for (const width of [1, 1.3])
      for (const lean of [0.3, 0.45]) {
        const { aside } = limitOf({ width, lean });
        expect(aside).toBeGreaterThan(0.85);
        expect(aside).toBeLessThan(1.15);
      }
  });
});

const bench = { widthMm: 12.7, depthMm: 12.7, toothMm: 12.7 };
const notches: Omit<RidgeBench, 'ridgesDeg' | 'cellsAPitch'>[] = [bench, { widthMm: 10, depthMm: 8, toothMm: 8 }];

describe('solver against ridge law: slanted notches, pressed', () => {
  const draws = notches.flatMap((notch) =>
    [0, 30].flatMap((ridgesDeg) => [8, 16].map((cellsAPitch) => ({ notch, ridgesDeg, cellsAPitch }))),
  );
  it.each(draws)(
    '$notch.widthMm × $notch.depthMm at $ridgesDeg°, $cellsAPitch cells a pitch: within 2 points',
    ({ notch, ridgesDeg, cellsAPitch }) => {
      const side = ridgesDeg === 0 ? {} : { sideMm: 210 };
      const setup = ridgeSetup({ ...notch, shape: 'slanted', ridgesDeg, cellsAPitch, ...side });
      const { trowel, tile, mortar } = setup;
      const ridges = {
        pitchMm: pitchMm(trowel),
        meanMm: meanBedMm(trowel),
        touchShare: notch.widthMm / pitchMm(trowel),
        lean: leanShare(trowel),
      };
      for (const pressure of [0.7, 0.9, 1.2, 1.6, 2.2, 2.8]) {
        const bed = startBed(setup);
        press(bed, { forceN: pressure * mortar.yieldPa * tile.lengthMm * tile.widthMm * 1e-6, atX: 0, atY: 0 });
        expect(Math.abs(coverage(bed) - coverageUnder(pressure, ridges)), `at ${pressure} τ`).toBeLessThan(0.02);
      }
    },
  );

  it('the law rises with coverage, asks for less than upright ridges do, and for as much when full', () => {
    for (const lean of [0.1, 0.3, 0.6]) {
      const upright = { pitchMm: 20, meanMm: 4, touchShare: 0.5 };
      let last = 0;
      for (let share = 0.02; share < 1; share += 0.02) {
        const pressure = pressedAt(share, { ...upright, lean });
        expect(pressure).toBeGreaterThan(last);
        expect(pressure).toBeLessThan(pressureAt(share, upright));
        last = pressure;
      }
      expect(pressedAt(1, { ...upright, lean })).toBeCloseTo(pressureAt(1, upright), 12);
      // A slide knows no lean.
      const slide = { pathMm: 4, across: 1, viscousMm: 0.1 };
      expect(coverageAfterSlide(0.7, 1, slide, { ...upright, lean })).toBe(coverageAfterSlide(0.7, 1, slide, upright));
    }
  });
});

describe('a tile on slanted ridges', () => {
  const at = (cellsAPitch: number, pressure: number, ridgesDeg: number): number => {
    const setup = ridgeSetup({ ...bench, shape: 'slanted', ridgesDeg, cellsAPitch, sideMm: 203.2 });
    setup.actions = [{ do: 'press', forceN: pressure * 500 * 0.2032 ** 2, atX: 10, atY: 15 }];
    return runBed(setup).result.coverage;
  };
  it.each([
    [0.8, 0],
    [1.2, 30],
    [2, 90],
  ])('8 → 16 cells a pitch at %d τ, ridges at %d°: within a point', (pressure, ridgesDeg) => {
    expect(Math.abs(at(16, pressure, ridgesDeg) - at(8, pressure, ridgesDeg))).toBeLessThan(0.01);
  });

  it('leans as far as the hand’s own stroke goes straight, to its right, and not there and back', () => {
    const setup = ridgeSetup({ ...bench, shape: 'slanted', ridgesDeg: 0, cellsAPitch: 8 });
    const drawn = (path: [number, number][]) => leanOf({ ...setup, comb: { ...setup.comb, pattern: 'drawn', path } });
    const straight = leanOf(setup)!;
    const along = drawn([
      [-100, 0],
      [0, 0],
      [100, 0],
    ])!;
    expect(along.share).toBeCloseTo(straight.share, 12);
    expect(along.towards[1]).toBeCloseTo(straight.towards[1], 12);
    const corner = drawn([
      [0, 0],
      [100, 0],
      [100, 100],
    ])!;
    expect(corner.share).toBeCloseTo(straight.share * Math.SQRT1_2, 12);
    const back = drawn([
      [0, 0],
      [100, 0],
      [0, 0],
    ]);
    expect(back).toBeNull();
  });

  it('is pictured leaning as it was combed, and further when pressed', () => {
    const setup = ridgeSetup({ ...bench, shape: 'slanted', ridgesDeg: 90, cellsAPitch: 8, sideMm: 203.2 });
    setup.actions = [{ do: 'press', forceN: 500 * 0.2032 ** 2, atX: 0, atY: 0 }];
    const slopes: number[] = [];
    runBed(setup, { onFrame: ({ leanSlope }) => slopes.push(leanSlope![0]) });
    expect(slopes[0]).toBeCloseTo(-SLANT, 12);
    expect(slopes.at(-1)!).toBeLessThan(1.5 * slopes[0]!);
  });

  it('has its feet stay where they were combed, pictured from the back down, pressed and slid', () => {
    const setup = ridgeSetup({ ...bench, shape: 'slanted', ridgesDeg: 90, cellsAPitch: 8, sideMm: 203.2 });
    const forceN = 400 * 0.2032 ** 2;
    setup.actions = [
      { do: 'press', forceN, atX: 0, atY: 0 },
      { do: 'slide', forceN, strokeMm: 5, strokes: 2, directionDeg: 0, speedMmS: 20 },
    ];
    const freshMm = ridgeHeightMm(setup.trowel) * SLANT;
    const feet: number[] = [];
    const { result, frame } = runBed(setup, {
      onFrame: ({ leanSlope, driftMm, tileHeightMm }) => {
        if (driftMm) feet.push(driftMm[0] - leanSlope![0] * tileHeightMm);
      },
    });
    expect(frame.driftMm).toEqual(result.driftMm);
    expect(feet.length).toBeGreaterThan(3);
    // The lean that is kept over the ridge's width and the drift that follows the fall are two parts of the model: they
    // agree to a fifth of the lean.
    for (const foot of feet) expect(Math.abs(foot - freshMm)).toBeLessThan(0.2 * freshMm);
  });

  it('drifts the way the ridges lean, no further than it comes down', () => {
    const setup = ridgeSetup({ ...bench, shape: 'slanted', ridgesDeg: 90, cellsAPitch: 8, sideMm: 203.2 });
    const fresh = startBed(setup).height;
    setup.actions = [{ do: 'press', forceN: 500 * 0.2032 ** 2, atX: 0, atY: 0 }];
    const { driftMm, tileHeightMm } = runBed(setup).result;
    const down = fresh - tileHeightMm;
    expect(driftMm![1]).toBeCloseTo(0, 12);
    // The comb is drawn towards y; its right is the lesser x, and there it leans (see `ridgeOutline`).
    expect(driftMm![0]).toBeLessThan(-0.8 * down);
    expect(driftMm![0]).toBeGreaterThanOrEqual(-down - 1e-9);
  });
});
