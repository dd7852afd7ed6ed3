import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { forecastOf, forecastsOf } from '@quiz/records/pull-forecast.ts';
import { readPlateTest, testedYieldPa, type PlateTest } from '@quiz/records/plate-test.ts';
import { freshTile, waysOfSetting, type PullRecord } from '@quiz/records/pull-record.ts';

/** 50 mL under 2 kg, 96 mm wide. */
const plates: PlateTest = { volumeMl: 50, massKg: 2, diameterMm: 96 };
const record = (more: Partial<PullRecord> = {}): PullRecord => ({
  id: 'a', learner: 'Ada', day: '2026-11-30', standards: 'north-america', exposure: 'interior-dry', surface: 'floor',
  material: 'porcelain', lengthMm: 610, widthMm: 305, thicknessMm: 9, predicted: null, photo: false,
  tiles: [freshTile()], notch: '1-2-1-2-in-square', setBy: 'across', buttered: false, plates, ...more,
}); // prettier-ignore

describe('the two-plate test of a class', () => {
  test('gives the stress of its formula', () => {
    // τ = F ÷ (πR² (1.366 + 2πR³/3V)): 19.62 N, R 48 mm, V 50 mL, by hand.
    const area = Math.PI * 0.048 ** 2;
    const hand = (2 * 9.81) / (area * (1.366 + (2 * Math.PI * 48 ** 3) / (3 * 50_000)));
    expect(testedYieldPa(plates)).toBeCloseTo(hand, 6);
    expect(hand).toBeCloseTo(451.9, 1);
  });
  test('says nothing of a lump, and what is no test is none', () => {
    expect(testedYieldPa({ ...plates, diameterMm: 40 })).toBeNull();
    for (const bad of [null, {}, 'x', { ...plates, massKg: Number.NaN }, { ...plates, diameterMm: 0 }, [plates]])
      expect(readPlateTest(bad)).toBeNull();
    expect(readPlateTest({ ...plates })).toEqual(plates);
  });
});

describe('the forecast of a pull', () => {
  test('needs the notch, the way and the mortar, and is not made for mosaics', () => {
    expect(forecastOf(record())).not.toBeNull();
    for (const more of [
      { notch: null },
      { notch: 'no-such' },
      { setBy: null },
      { plates: null },
      { plates: { ...plates, diameterMm: 40 } },
      { material: 'mosaic' },
    ] satisfies Partial<PullRecord>[])
      expect(forecastOf(record(more)), JSON.stringify(more)).toBeNull();
  });

  test('of a large tile that is only pressed stays near where its ridges touch first; moved across, it is near full', () => {
    // Trade magazine 2018: a tile that only rests on square ridges touches over about half of its back.
    const pressed = forecastOf(record({ setBy: 'pressed' }));
    expect(pressed?.low).toBeGreaterThan(0.45);
    expect(pressed?.low).toBeLessThan(0.65);
    expect(forecastOf(record())?.middle).toBeGreaterThan(0.9);
  });

  test('keeps its order: hands, ways, mixes; the tile may be written either way round', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('1-4-1-4-in-square', '1-4-3-8-in-square', '1-2-1-2-in-square', '3-4-3-4-in-u'),
        fc.double({ min: 100, max: 900, noNaN: true }),
        fc.double({ min: 100, max: 900, noNaN: true }),
        fc.double({ min: 85, max: 130, noNaN: true }),
        (notch, lengthMm, widthMm, diameterMm) => {
          const of = (more: Partial<PullRecord>) =>
            forecastOf(record({ notch, lengthMm, widthMm, plates: { ...plates, diameterMm }, ...more }));
          for (const setBy of waysOfSetting) {
            const told = of({ setBy })!;
            expect(told.low).toBeGreaterThanOrEqual(0);
            expect(told.low).toBeLessThanOrEqual(told.middle + 1e-9);
            expect(told.middle).toBeLessThanOrEqual(told.high + 1e-9);
            expect(told.high).toBeLessThanOrEqual(1);
            expect(of({ setBy, lengthMm: widthMm, widthMm: lengthMm })).toEqual(told);
          }
          const [pressed, across, along] = waysOfSetting.map((setBy) => of({ setBy })!.middle);
          expect(pressed).toBeLessThanOrEqual(along! + 1e-9);
          expect(along).toBeLessThanOrEqual(across! + 1e-9);
          const softer = of({ setBy: 'pressed', plates: { ...plates, diameterMm: diameterMm + 5 } })!;
          expect(softer.middle).toBeGreaterThanOrEqual(pressed! - 1e-9);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('is held against what the class pulled', () => {
    const half = { ...freshTile(), marks: `${'#'.repeat(72)}${'.'.repeat(72)}` };
    const both = [record(), record({ id: 'b', tiles: [half] }), record({ id: 'c', plates: null })];
    const told = forecastOf(both[0]!)!.middle;
    const found = forecastsOf(both);
    expect(found.count).toBe(2);
    expect(found.bias).toBeCloseTo(told - 0.75, 9);
    expect(found.spread).toBeCloseTo(0.5 / Math.SQRT2, 9);
  });
});
