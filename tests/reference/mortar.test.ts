import { describe, expect, it } from 'vitest';

import { pressureForTrowel } from '@sim/bed/ridge-law.ts';
import { glassYieldPa } from '@sim/mortar/glass.ts';
import { restedYieldPa } from '@sim/mortar/rest.ts';
import { pressedTransfer, slidTransfer } from '@sim/mortar/skin.ts';
import { isFlatPatty, leastDiameter, yieldFromPatty } from '@sim/mortar/two-plate.ts';

const sixes = { shape: 'square', widthMm: 6, depthMm: 6, toothMm: 6, angleDeg: 60, wearMm: 0 } as const;

describe('two-plate test', () => {
  // Plastic disc of constant volume with its end term: 50 ml under 2 kg in all (derived, Ritz bound for the end term).
  it.each([
    [70, 1610],
    [80, 965],
    [90, 595],
    [100, 378.385],
    [110, 248],
    [120, 167],
    [130, 115],
    [140, 81],
  ])('%d mm wide means %d Pa', (diameter, yieldPa) => {
    expect(Math.abs(yieldFromPatty(diameter, { volumeMm3: 50_000, forceN: 2 * 9.81 }) / yieldPa - 1)).toBeLessThan(
      0.006,
    );
  });

  it('holds only for a flat disc', () => {
    expect(isFlatPatty(100, 50_000)).toBe(true);
    expect(isFlatPatty(50, 50_000)).toBe(false);
    // There the radius is twice the thickness V/πR².
    const least = leastDiameter(50_000);
    expect(least / 2 / (50_000 / (Math.PI * (least / 2) ** 2))).toBeCloseTo(2, 12);
  });
});

describe('glass test', () => {
  // EN 1347: 100 × 100 mm glass, 6 × 6 notch at 12 mm, 60°, 50 N; its reading by the ridge law (derived).
  it.each([
    [0.94, 1500],
    [0.82, 2000],
    [0.66, 3000],
  ])('%d wetted means about %d Pa', (share, yieldPa) => {
    const found = glassYieldPa({ massKg: 50 / 9.81, sideMm: 100, coverage: share }, pressureForTrowel(share, sixes));
    expect(Math.abs(found / yieldPa - 1)).toBeLessThan(0.015);
  });
});

describe('skin and rest', () => {
  it('transfers all at once, a third or so after t₀, and wins it back by sliding', () => {
    expect(pressedTransfer(0)).toBe(1);
    expect(pressedTransfer(30, 30)).toBeCloseTo(Math.exp(-1), 12);
    expect(slidTransfer(0.2, 0)).toBe(0.2);
    expect(slidTransfer(0.2, 100)).toBe(1);
  });

  it('stiffens at rest, to a limit', () => {
    expect(restedYieldPa(500, 0)).toBe(500);
    expect(restedYieldPa(500, 10)).toBe(680);
    expect(restedYieldPa(500, 1000)).toBe(1000);
  });
});
