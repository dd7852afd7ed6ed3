import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { pattyDiameter, pattyMm, yieldFromPatty } from '@sim/mortar/two-plate.ts';

const plates = { volumeMm3: 50_000, forceN: 19.62 };

/**
 * 50 mL under 2 kg: diameters and yield stresses computed apart from this code, from the plastic disc with its rim
 * (a Ritz bound of the rim, integrated numerically).
 */
const table: [diameterMm: number, yieldPa: number][] = [
  [70, 1610],
  [80, 965],
  [90, 595],
  [100, 378],
  [110, 248],
  [120, 167],
  [130, 115],
  [140, 81],
];

describe('two-plate test', () => {
  it.each(table)('%d mm means %d Pa', (diameter, yieldPa) => {
    expect(Math.abs(yieldFromPatty(diameter, plates) - yieldPa)).toBeLessThanOrEqual(Math.max(0.6, yieldPa * 0.004));
  });

  it('comes to the thin plastic disc F = 2πτR³/(3h) as the patty gets wide (classic plasticity)', () => {
    const diameter = 600;
    const thin = (3 * plates.forceN * 1e6 * pattyMm(diameter, plates.volumeMm3)) / (2 * Math.PI * (diameter / 2) ** 3);
    expect(yieldFromPatty(diameter, plates) / thin).toBeGreaterThan(0.99);
    expect(yieldFromPatty(diameter, plates) / thin).toBeLessThan(1);
  });

  it('reads back what it foretells, and a stiffer mix is always a smaller patty', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 30, max: 3000, noNaN: true }),
        fc.double({ min: 1.02, max: 3, noNaN: true }),
        (yieldPa, stiffer) => {
          const diameter = pattyDiameter(yieldPa, plates);
          expect(yieldFromPatty(diameter, plates) / yieldPa).toBeCloseTo(1, 6);
          expect(pattyDiameter(yieldPa * stiffer, plates)).toBeLessThan(diameter);
        },
      ),
    );
  });
});
