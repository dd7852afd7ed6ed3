import { describe, expect, it } from 'vitest';

import { measure, startBed } from '@sim/bed/bed.ts';
import { OPEN } from '@sim/bed/grid.ts';
import { press } from '@sim/bed/press.ts';

import { flatBed, ridgeSetup } from './bed-benches.ts';

/** Sand-heap roof over a rectangle (Nadai 1923 for plastic torsion; Prigozhin 1996 for sandpiles): N, mm, Pa. */
const roofLoad = (tau: number, a: number, b: number, h: number): number =>
  ((tau * a * a * (3 * b - a)) / (6 * h)) * 1e-6;

describe('plastic load of a full gap', () => {
  const at = (cellMm: number): number =>
    flatBed({ lengthMm: 200, widthMm: 100, depthMm: 4, yieldPa: 400, cellMm, endTerm: false }).load.forceN;
  const exact = roofLoad(400, 100, 200, 4);

  it('rectangle: within 1.5 % at 1 mm, error at least halving with the cell', () => {
    expect(exact).toBeCloseTo(83.333, 3);
    const errors = [2, 1, 0.5].map((cell) => Math.abs(at(cell) / exact - 1));
    expect(errors[1]).toBeLessThan(0.015);
    expect(errors[1]!).toBeLessThan(errors[0]! / 2);
    expect(errors[2]!).toBeLessThan(errors[1]! / 2);
  });

  it('rectangle pressed thinner: stops where the roof bears the push', () => {
    const bed = flatBed({ lengthMm: 200, widthMm: 100, depthMm: 4, yieldPa: 400, cellMm: 1, endTerm: false });
    press(bed, { forceN: 125, atX: 0, atY: 0 });
    expect(bed.height / ((400e-6 * 100 * 100 * 500) / 6 / 125) - 1).toBeLessThan(0.015);
    expect(bed.load.forceN / roofLoad(400, 100, 200, bed.height)).toBeCloseTo(1, 2);
  });

  // F = 2πτR³/(3h): the cone over a disc (Covey and Stanmore 1981, the limit of no speed).
  it.each([0.5, 0.25])('disc: within 2 %% at %d mm', (cellMm) => {
    const bed = flatBed({ lengthMm: 102, widthMm: 102, depthMm: 3, yieldPa: 500, cellMm, endTerm: false });
    const { grid } = bed;
    for (let n = 0; n < grid.state.length; n += 1) {
      const row = Math.floor(n / grid.columns);
      const x = grid.originMm[0] + (n - row * grid.columns) * grid.cellMm;
      const y = grid.originMm[1] + row * grid.cellMm;
      if (x * x + y * y > 2500) grid.state[n] = OPEN;
    }
    measure(bed);
    expect(Math.abs(bed.load.forceN / 43.6332 - 1)).toBeLessThan(0.02);
  });

  // F/L = τw(w/2h + 3/2): Hill's slip-line loads for rough platens, 1 ≤ w/h ≲ 4 (from memory), checked by upper bounds.
  it.each([1, 0.5])('long strip with its end term: within 2 %% at %d mm', (cellMm) => {
    const strip = (lengthMm: number): number =>
      flatBed({ lengthMm, widthMm: 12, depthMm: 3, yieldPa: 500, cellMm, endTerm: true }).load.forceN;
    const perMetre = (strip(600) - strip(300)) / 0.3;
    expect(Math.abs(perMetre / 21 - 1)).toBeLessThan(0.02);
  });
});

describe('one ridge under a dead load', () => {
  // τ(A²/2h³ + 3A/2h) = F/L at τ = 400 Pa, A = 36 mm², F/L = 12 N/m: h = 3.53173 mm (derived from the two lines above).
  it.each([8, 12])('stops at its gap: within 2 %% with %d cells to the notch', (cells) => {
    const setup = ridgeSetup({
      widthMm: 6,
      depthMm: 6,
      toothMm: 34,
      bladeDeg: 90,
      ridgesDeg: 0,
      cellsAPitch: (40 / 6) * cells,
      yieldPa: 400,
    });
    setup.tile.widthMm = 40;
    setup.tile.lengthMm = 600;
    const bed = startBed(setup);
    press(bed, { forceN: 12 * 0.6, atX: 0, atY: 0 });
    expect(Math.abs(bed.height / 3.53173 - 1)).toBeLessThan(0.02);
  });
});
