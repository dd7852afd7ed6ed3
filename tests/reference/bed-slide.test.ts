import { describe, expect, it } from 'vitest';

import { startBed, type Bed } from '@sim/bed/bed.ts';
import { coverage } from '@sim/bed/contact.ts';
import { slide } from '@sim/bed/slide.ts';
import { plainLoad, slideLoad, slideRate } from '@sim/bed/slide-law.ts';
import { acrossTable, alongTable, tableRates, tableSpeeds } from '@sim/bed/slide-table.ts';
import { coverageAfterSlide } from '@sim/bed/ridge-law.ts';

import { ridgeSetup } from './bed-benches.ts';
import { exactSlideLoad, fluxAcrossSlide, fluxAlongSlide } from './slot-flux.ts';

describe('the slide law without viscosity', () => {
  // Widening over slide at a load ratio, across and along (derived from the plug between two slipping walls).
  it.each([
    [0.05, 1.03, 0.08],
    [0.1, 1.05, 0.15],
    [0.2, 1.12, 0.31],
    [0.3, 1.2, 0.48],
    [0.5, 1.41, 0.91],
    [0.7, 1.83, 1.65],
    [0.9, 3.16, 4.0],
  ])('at %d of the plastic load widens %d across, %d along', (load, across, along) => {
    expect(Math.abs(slideRate(load, 1, 0) - across)).toBeLessThan(0.0051);
    expect(Math.abs(slideRate(load, 0, 0) - along)).toBeLessThan(0.0051);
  });

  it('gives the load ratios of a ridge of 12 mm at 3 mm, closing 20 mm/s, sliding 50 mm/s: along, across, at 45°', () => {
    const rate = (20 * 12) / (50 * 3);
    expect(plainLoad(rate, 0)).toBeCloseTo(0.691364, 6);
    expect(plainLoad(rate, 1)).toBeCloseTo(0.609375, 6);
    expect(plainLoad(rate, Math.SQRT1_2)).toBeCloseTo(0.68546, 5);
  });
});

describe('the slide law with viscosity', () => {
  // Exact slot fluxes at h 3 mm, U 50 mm/s, μ 8 Pa·s, τ 400 Pa: the scale of q is Uh, of G τ/h.
  it.each([
    [2e4, 0.000069375, 0.00000140858],
    [1.5e5, 0.00003849, 0.0000114949],
    [5e5, 0.0000198818, 0.0000605629],
  ])('rests on the slot fluxes at %d Pa/m', (gradient, along, across) => {
    const mu = (8 * 0.05) / (0.003 * 400);
    const G = (gradient * 0.003) / 400;
    expect((fluxAlongSlide(G, mu) * 0.05 * 0.003) / along).toBeCloseTo(1, 5);
    expect((fluxAcrossSlide(G, mu) * 0.05 * 0.003) / across).toBeCloseTo(1, 5);
  });

  it('has a table that is the exact load of the ridge, every entry', () => {
    tableSpeeds.forEach((speed, row) => {
      tableRates.forEach((rate, column) => {
        expect(acrossTable[row]![column]! / exactSlideLoad(rate, speed, false)).toBeCloseTo(1, 3);
        expect(alongTable[row]![column]! / exactSlideLoad(rate, speed, true)).toBeCloseTo(1, 3);
      });
    });
  });

  it('stays within 6 % of the exact load between the table’s entries, or 0.01 of the plastic load', () => {
    for (const speed of [0.015, 0.07, 0.25, 0.7])
      for (const rate of [0.25, 0.6, 0.95, 1.2, 1.7])
        for (const along of [false, true]) {
          const exact = exactSlideLoad(rate, speed, along);
          expect(Math.abs(slideLoad(rate, along ? 0 : 1, speed) - exact), `${rate} ${speed} ${along}`).toBeLessThan(
            Math.max(0.01, 0.06 * exact),
          );
        }
  });
});

describe('solver: sliding straight ridges', () => {
  const bench = { widthMm: 6, depthMm: 6, toothMm: 6, cellsAPitch: 12 };
  const start = (ridgesDeg: number): Bed => startBed(ridgeSetup({ ...bench, ridgesDeg }));
  const slideX = (bed: Bed, forceN: number, pathMm: number): void => {
    const field = { shiftX: 1, shiftY: 0, turn: 0 };
    slide(bed, { applied: { forceN, atX: 0, atY: 0 }, field, pathMm, speedMmS: 0 });
  };

  // Rate-independent limit: every ridge widens by the stroke under the lightest load.
  it.each([1, 2, 4])('across under a light load, %d mm: coverage rises by s/P within 2 points', (stroke) => {
    const bed = start(90);
    const before = coverage(bed);
    slideX(bed, 0.01 * bed.load.forceN, stroke);
    expect(Math.abs(coverage(bed) - before - stroke / 12)).toBeLessThan(0.02);
  });

  it.each([
    [0.2, 90, 1.11803],
    [0.5, 90, 1.41421],
    [0.2, 0, 0.308375],
    [0.5, 0, 0.909827],
  ])('at %d of the plastic load, ridges at %d°: widens %d times the slide, within 5 %%', (ratio, ridgesDeg, rate) => {
    const bed = start(ridgesDeg);
    const from = bed.height;
    const path = 0.05;
    slideX(bed, ratio * bed.load.forceN, path);
    const sunk = from - bed.height;
    // w = A/h, so dw = w dh/h.
    expect(((sunk / path) * 6) / from / rate).toBeGreaterThan(0.95);
    expect(((sunk / path) * 6) / from / rate).toBeLessThan(1.05);
  });

  it('goes with the ridge law over a whole stroke, viscosity and all, within 2 points', () => {
    const setup = ridgeSetup({ ...bench, ridgesDeg: 90 });
    setup.physics.viscosity = true;
    const bed = startBed(setup);
    const areaM2 = (setup.tile.lengthMm * setup.tile.widthMm) / 1e6;
    const pressure = 0.8;
    slide(bed, {
      applied: { forceN: pressure * 500 * areaM2, atX: 0, atY: 0 },
      field: { shiftX: 1, shiftY: 0, turn: 0 },
      pathMm: 4,
      speedMmS: 20,
    });
    const law = coverageAfterSlide(
      0.5,
      pressure,
      { pathMm: 4, across: 1, viscousMm: (10 * 20) / 500 },
      { pitchMm: 12, meanMm: 2.59808, touchShare: 0.5 },
    );
    expect(Math.abs(coverage(bed) - law)).toBeLessThan(0.02);
  });
});
