import { defaultSetup } from '@sim/bed/defaults.ts';
import { combBed } from '@sim/bed/fill.ts';
import type { NotchShape, TrowelSetup } from '@sim/bed/types.ts';
import { meanBedMm, pitchMm, ridgeAreaMm2, ridgeHeightMm } from '@sim/trowel/notch.ts';
import { ridgeOutline } from '@sim/trowel/profile.ts';
import { describe, expect, it } from 'vitest';

const trowel = (over: Partial<TrowelSetup> = {}): TrowelSetup => ({ ...defaultSetup().trowel, ...over });

describe('a blade turned off square', () => {
  // Plain geometry: seen along the stroke, every width of the blade is shorter by the cosine of its turn.
  it.each(['square', 'v', 'u', 'slanted'] as NotchShape[])(
    '%s: narrows ridges and lanes, keeps height and bed',
    (shape) => {
      const plain = trowel({ shape });
      const turned = trowel({ shape, yawDeg: 60 });
      expect(pitchMm(turned)).toBeCloseTo(pitchMm(plain) / 2, 12);
      expect(ridgeAreaMm2(turned)).toBeCloseTo(ridgeAreaMm2(plain) / 2, 12);
      expect(ridgeHeightMm(turned)).toBe(ridgeHeightMm(plain));
      expect(meanBedMm(turned)).toBeCloseTo(meanBedMm(plain), 12);
      const across = ridgeOutline(turned).map(([mm]) => mm);
      const before = ridgeOutline(plain).map(([mm]) => mm);
      across.forEach((mm, n) => expect(mm).toBeCloseTo(before[n]! / 2, 12));
    },
  );

  it('combs as many more ridges under the tile', () => {
    const ridges = (yawDeg: number): number => {
      const setup = defaultSetup();
      setup.trowel = trowel({ yawDeg });
      const grid = combBed(setup);
      const row = Math.floor(grid.rows / 2) * grid.columns + grid.rim;
      let count = 0;
      for (let n = 0; n < grid.tileColumns; n += 1)
        if (grid.mortar[row + n]! > 5 && (n === 0 || grid.mortar[row + n - 1]! <= 5)) count += 1;
      return count;
    };
    // Middles at every 25.4 mm, and at every 25.4 × cos 45° = 17.96 mm, from the tile's own, within 305 mm either side.
    expect(ridges(0)).toBe(2 * 12 + 1);
    expect(ridges(45)).toBe(2 * 17 + 1);
  });
});

describe('coats, bare edges and the flat side', () => {
  const meanUnder = (over: (setup: ReturnType<typeof defaultSetup>) => void): number => {
    const setup = defaultSetup();
    over(setup);
    const grid = combBed(setup);
    let sum = 0;
    for (let row = grid.rim; row < grid.rim + grid.tileRows; row += 1)
      for (let column = grid.rim; column < grid.rim + grid.tileColumns; column += 1)
        sum += grid.mortar[row * grid.columns + column]!;
    return sum / (grid.tileRows * grid.tileColumns);
  };
  const bed = meanBedMm(trowel());

  it('a key coat adds its thickness, flattening changes nothing but the shape', () => {
    expect(meanUnder((s) => void (s.comb.keyCoatMm = 0.8)) - meanUnder(() => undefined)).toBeCloseTo(0.8, 9);
    expect(meanUnder((s) => void (s.comb.flattened = true))).toBeCloseTo(bed, 9);
  });

  it('wear and a lower blade take height off', () => {
    // 12.7 mm notch, 2.7 worn, at 30°: 10 × ½ high; half of that spread even.
    expect(ridgeHeightMm(trowel({ wearMm: 2.7, angleDeg: 30 }))).toBeCloseTo(5, 12);
    expect(meanBedMm(trowel({ wearMm: 2.7, angleDeg: 30 }))).toBeCloseTo(2.5, 12);
  });
});
