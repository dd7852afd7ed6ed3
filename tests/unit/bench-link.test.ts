import { defaultActions } from '@sim/bed/defaults.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import { bedOf, linkOf, setupOf } from '@site/islands/bench/link.ts';
import { startSetup, withCells } from '@site/islands/bench/start-setup.ts';
import { lineText, readLine } from '@site/islands/bench/surface-lines.ts';
import { mortarTold, type Told } from '@site/islands/bench/told.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const reread = (setup: BedSetup): BedSetup => {
  const reading = setupOf(`#${linkOf(setup)}`);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.value;
};

describe('a bed in the address', () => {
  test('the start is short, and one changed thing is one word', () => {
    expect(linkOf(startSetup())).toBe('bed=1');
    const swirl = startSetup();
    expect(linkOf({ ...swirl, comb: { ...swirl.comb, pattern: 'swirl' } })).toBe('bed=1&comb=swirl');
  });

  test('what goes in comes out', () => {
    const tenths = (min: number, max: number): fc.Arbitrary<number> =>
      fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
    fc.assert(
      fc.property(
        tenths(-3, 3),
        fc.constantFrom('straight', 'swirl', 'fan', 'wobble', 'crossed') as fc.Arbitrary<BedSetup['comb']['pattern']>,
        fc.integer({ min: 0, max: 180 }),
        tenths(0, 3),
        fc.integer({ min: 0, max: 60 }),
        fc.boolean(),
        fc.constantFrom(1, 6),
        (bow, pattern, directionDeg, butterMm, ageMin, flattened, pieces) => {
          const start = startSetup();
          const setup = withCells({
            ...start,
            tile: { ...start.tile, bowLengthMm: bow, pieces: { along: pieces, across: pieces, jointMm: 3 } },
            comb: { ...start.comb, pattern, directionDeg, flattened },
            mortar: { ...start.mortar, ageMin },
            butterMm,
            actions: [
              defaultActions.press,
              { ...defaultActions.slide, directionDeg },
              defaultActions.tap,
              defaultActions.twist,
              defaultActions.vibrate,
            ],
          });
          expect(reread(setup)).toEqual(setup);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('laid only is said, not forgotten', () => {
    expect(reread({ ...startSetup(), actions: [] }).actions).toEqual([]);
  });

  test('a back by its shape, surfaces by readings, a turned blade and a twisted floor come out as they went in', () => {
    const start = startSetup();
    const setup = withCells({
      ...start,
      tile: {
        ...start.tile,
        bowLengthMm: 0,
        relief: { shape: 'dots', pitchMm: 18, depthMm: 0.8, directionDeg: 30, raisedShare: 0.4 },
        readings: {
          alongMm: [0, 0.8, 1.2, 0.8, 0],
          diagonalsMm: [
            [0, -0.25, 0],
            [0, 1, 0],
          ],
        },
      },
      floor: {
        bowLengthMm: 0,
        bowWidthMm: 0,
        twistMm: 0,
        readings: {
          gridMm: [
            [0, 1, 0],
            [1, 2, -1],
          ],
        },
      },
      trowel: { ...start.trowel, yawDeg: 30 },
    });
    expect(reread(setup)).toEqual(setup);
    const twisted = withCells({ ...start, floor: { bowLengthMm: -1, bowWidthMm: 0.5, twistMm: 2 } });
    expect(reread(twisted)).toEqual(twisted);
    expect(linkOf(twisted)).toBe('bed=1&floor=-1&floor2=0.5&floor3=2');
  });

  const tests: [string, Told][] = [
    ['patty=2_50_96', { twoPlates: { massKg: 2, volumeMl: 50, diameterMm: 96 } }],
    ['glass=5_200_0.5', { glass: { massKg: 5, sideMm: 200, coverage: 0.5 } }],
    ['weather=32_breeze_true_dry', { weather: { temperatureC: 32, wind: 'breeze', sun: true, air: 'dry' } }],
  ];
  test.each(tests)('mortar told by %s stays told in the address', (words, told) => {
    const reading = mortarTold(startSetup(), told);
    if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
    expect(reading.value.mortar).not.toEqual(startSetup().mortar);
    const link = linkOf(reading.value, told);
    expect(link).toBe(`bed=1&${words}`);
    const back = bedOf(`#${link}`);
    expect(back).toEqual({ ok: true, value: { setup: withCells(reading.value), told } });
    // A number changed since is the truth: the test that no longer gives it is dropped.
    const stiffer = { ...reading.value, mortar: { ...reading.value.mortar, yieldPa: 777, skinMin: 13 } };
    expect(linkOf(stiffer, told)).toBe('bed=1&yield=777&skin=13');
  });

  test('half a weather is filled up with the usual day', () => {
    const reading = bedOf('#bed=1&weather=32');
    expect(reading.ok && reading.value.told.weather).toEqual({
      temperatureC: 32,
      wind: 'still',
      sun: false,
      air: 'middling',
    });
  });

  test('a line of readings is read in both units, and what is no length is named', () => {
    expect(readLine('0, 1/32; -1/16, 2 mm', 'imperial')).toMatchObject({ line: [0, 0.79375, -1.5875, 2] });
    expect(readLine('0, −0.8', 'metric')).toMatchObject({ line: [0, -0.8] });
    expect(readLine('0; 0,8; –1,2;', 'metric')).toMatchObject({ line: [0, 0.8, -1.2] });
    expect(readLine(' ', 'metric')).toMatchObject({ line: undefined });
    expect(readLine('0, much', 'metric')).toEqual({ notALength: 'much', at: 1 });
    // A reading that was left out is asked for: without it the others would stand in wrong places.
    expect(readLine('0, , 1', 'metric')).toEqual({ notALength: '', at: 1 });
    expect(lineText([0, -0.79375, 1.5875], 'imperial')).toBe('0, -1/32, 1/16');
  });

  test.each([
    ['#bed=2', 'bed'],
    ['#bed=1&back=waves_25_1_0_0.3', 'tile.relief.shape'],
    ['#bed=1&back=ribs_25_1_0_0.3_9', 'tile.relief'],
    ['#bed=1&back=ribs&relief=1', 'tile.reliefMm'],
    ['#bed=1&read=a0_1_0', 'tile.bowLengthMm'],
    ['#bed=1&bow=0&read=a0_x_0', 'tile.readings.alongMm'],
    ['#bed=1&bow=0&read=z0_1_0', 'tile.readings'],
    ['#bed=1&floorread=g0_1~g0', 'floor.readings.gridMm'],
    ['#bed=1&patty=2_50_10', 'mortar.twoPlates'],
    ['#bed=1&patty=2_50_96&glass=5_200_0.5', 'mortar.glass'],
    ['#bed=1&yield=400&glass=5_200_0.5', 'mortar.glass'],
    ['#bed=1&weather=21_gale', 'mortar.weather.wind'],
    ['#bed=1&yaw=90', 'trowel.yawDeg'],
    ['#bed=1&colour=red', 'colour'],
    ['#bed=1&long=40000', 'tile.lengthMm'],
    ['#bed=1&long=abc', 'tile.lengthMm'],
    ['#bed=1&nw=-3', 'trowel.widthMm'],
    ['#bed=1&comb=zigzag', 'comb.pattern'],
    ['#bed=1&age=NaN', 'mortar.ageMin'],
    ['#bed=1&do=x5', 'actions'],
  ])('%s is refused by name', (hash, field) => {
    const reading = setupOf(hash);
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.faults.map((fault) => fault.path).join(' ')).toContain(field);
  });
});
