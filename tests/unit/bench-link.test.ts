import { defaultActions } from '@sim/bed/defaults.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import { linkOf, setupOf } from '@site/islands/bench/link.ts';
import { startSetup, withCells } from '@site/islands/bench/start-setup.ts';
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

  test.each([
    ['#bed=2', 'bed'],
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
