import { describe, expect, it } from 'vitest';

import { startBed } from '@sim/bed/bed.ts';
import { coverage } from '@sim/bed/contact.ts';
import { press } from '@sim/bed/press.ts';
import { coverageUnder, pressureAt } from '@sim/bed/ridge-law.ts';
import { meanBedMm, pitchMm } from '@sim/trowel/notch.ts';

import { ridgeSetup, type RidgeBench } from './bed-benches.ts';

/** Widths and depths in mm: two common square notches, a narrow deep one, a U. */
const notches: Omit<RidgeBench, 'ridgesDeg' | 'cellsAPitch'>[] = [
  { widthMm: 6, depthMm: 6, toothMm: 6 },
  { widthMm: 8, depthMm: 8, toothMm: 8 },
  { widthMm: 6.35, depthMm: 9.525, toothMm: 6.35 },
  { shape: 'u', widthMm: 10, depthMm: 10, toothMm: 10 },
];

describe('the ridge law', () => {
  const sixes = { pitchMm: 12, meanMm: 2.59808, touchShare: 0.5 };

  // Derived from the strip with its end term at constant ridge area; 6 × 6 mm notch at 12 mm, blade at 60°.
  it.each([
    [0.5, 1.04],
    [0.6, 1.4],
    [0.7, 1.84],
    [0.8, 2.38],
    [0.9, 3.03],
    [0.95, 3.4],
    [1, 3.81],
  ])('needs, for coverage %d, a pressure of %d yield stresses', (share, pressure) => {
    expect(Math.abs(pressureAt(share, sixes) - pressure)).toBeLessThan(0.0051);
  });

  it('reads the other way: 1000 Pa on 500 Pa mortar gives 0.731270, and 1904.70 Pa is enough for all', () => {
    expect(coverageUnder(2, sixes)).toBeCloseTo(0.73127, 5);
    expect(500 * pressureAt(1, sixes)).toBeCloseTo(1904.7, 1);
    expect(coverageUnder(1905 / 500, sixes)).toBe(1);
  });
});

describe('solver against ridge law: straight ridges, pressed', () => {
  const shares = [0.5, 0.6, 0.7, 0.8, 0.9, 0.95];
  const draws = notches.flatMap((notch) =>
    [0, 30, 45].flatMap((ridgesDeg) => [8, 16].map((cellsAPitch) => ({ notch, ridgesDeg, cellsAPitch }))),
  );
  it.each(draws)(
    '$notch.widthMm × $notch.depthMm at $ridgesDeg°, $cellsAPitch cells a pitch: within 2 points',
    (draw) => {
      const { notch, ridgesDeg, cellsAPitch } = draw;
      const side = ridgesDeg === 0 ? {} : { sideMm: 150 };
      const setup = ridgeSetup({ ...notch, ridgesDeg, cellsAPitch, ...side });
      const ridges = { pitchMm: pitchMm(setup.trowel), meanMm: meanBedMm(setup.trowel), touchShare: 0 };
      const areaM2 = setup.tile.lengthMm * setup.tile.widthMm * 1e-6;
      for (const share of shares) {
        const bed = startBed(setup);
        press(bed, { forceN: pressureAt(share, ridges) * setup.mortar.yieldPa * areaM2, atX: 0, atY: 0 });
        expect(Math.abs(coverage(bed) - share), `coverage ${share}`).toBeLessThan(0.02);
      }
    },
  );
});

describe('refining the cell', () => {
  it.each([0, 30])('ridges at %d°: 8 → 16 cells a pitch moves coverage by less than a point', (ridgesDeg) => {
    const at = (cellsAPitch: number): number => {
      const setup = ridgeSetup({ widthMm: 8, depthMm: 8, toothMm: 8, ridgesDeg, cellsAPitch, sideMm: 152 });
      const bed = startBed(setup);
      press(bed, { forceN: 2 * 500 * 0.152 * 0.152, atX: 0, atY: 0 });
      return coverage(bed);
    };
    expect(Math.abs(at(16) - at(8))).toBeLessThan(0.01);
  });
});
