import { readSetup } from '@sim/bed/read-setup.ts';
import { runBed } from '@sim/bed/run.ts';
import { defaultSetup } from '@sim/bed/defaults.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import { combField } from '@sim/trowel/comb.ts';
import { meanBedMm, pitchMm } from '@sim/trowel/notch.ts';
import { acrossStroke, strokeLong, type StrokeSpot } from '@sim/trowel/stroke.ts';
import { linkOf, setupOf } from '@site/islands/bench/link.ts';
import { startSetup, withCells } from '@site/islands/bench/start-setup.ts';
import { strokeSays } from '@site/islands/bench/stroke-words.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const path: [number, number][] = [
  [-160, -40],
  [-60, 25],
  [70, 30],
  [150, -20],
];
const drawn = (over: Partial<BedSetup> = {}): BedSetup => {
  const start = startSetup();
  return withCells({ ...start, comb: { ...start.comb, pattern: 'drawn', path }, ...over });
};

describe('a comb along a hand’s own stroke', () => {
  test('straight at any angle it is the straight comb, past its ends and beside it too', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -179, max: 180 }),
        fc.integer({ min: -300, max: 300 }),
        fc.integer({ min: -150, max: 150 }),
        (angle, x, y) => {
          const way = (angle * Math.PI) / 180;
          const across = acrossStroke([
            [-40 * Math.cos(way), -40 * Math.sin(way)],
            [90 * Math.cos(way), 90 * Math.sin(way)],
          ]);
          // The distance of a place from a line through the origin.
          expect(across(x, y)).toBeCloseTo(y * Math.cos(way) - x * Math.sin(way), 6);
        },
      ),
    );
  });

  test('round a circle the ridges are circles about its middle', () => {
    const circle: StrokeSpot[] = Array.from({ length: 49 }, (_, n) => {
      const turn = (2 * Math.PI * n) / 48;
      return [200 * Math.cos(turn), 200 * Math.sin(turn)];
    });
    const across = acrossStroke(circle);
    // A polygon of 48 sides with its corners cut lies within a millimetre of its circle.
    for (const far of [90, 150, 199, 260, 330])
      for (const turn of [0.4, 1.9, 3.3, 5]) {
        expect(Math.abs(across(far * Math.cos(turn), far * Math.sin(turn)) - (200 - far))).toBeLessThan(1);
      }
  });

  test('the later pass of the blade is what stays', () => {
    const across = acrossStroke([
      [-300, 0],
      [300, 0],
      [300, 100],
      [-300, 100],
    ]);
    // The way back at y = 100 runs leftwards, so a place nearer the viewer is on the hand’s left.
    expect(across(0, 60)).toBeCloseTo(40, 6);
    expect(across(0, 0)).toBeCloseTo(100, 6);
    // 280 mm of blade reach 140 below y = 100: a place beyond keeps the first pass.
    expect(across(0, -60)).toBeCloseTo(-60, 6);
  });

  test('leaves the notch’s mean bed, wherever it bends', () => {
    const { trowel, comb, tile } = drawn();
    const field = combField(comb, trowel, 1, tile.lengthMm, tile.widthMm);
    const spot = { heightMm: 0, footMm: 0 };
    let sum = 0;
    let count = 0;
    for (let y = -150; y <= 150; y += 1)
      for (let x = -300; x <= 300; x += 1) {
        field(x, y, spot);
        sum += spot.heightMm;
        count += 1;
      }
    // A stroke bends by shearing whole ridges, which neither adds nor takes; a pitch at the rim is cut anyhow.
    expect(Math.abs(sum / count / meanBedMm(trowel) - 1)).toBeLessThan(pitchMm(trowel) / 300);
  });

  test('straight across it gives the straight comb’s coverage', () => {
    const base = { ...defaultSetup(), cellMm: 2.54, actions: [{ do: 'press' as const, forceN: 200, atX: 0, atY: 0 }] };
    const straight = runBed({ ...base, comb: { ...base.comb, directionDeg: 90 } }).result.coverage;
    const own = runBed({
      ...base,
      comb: {
        ...base.comb,
        pattern: 'drawn',
        path: [
          [0, -100],
          [0, 100],
        ],
      },
    }).result.coverage;
    // Every comb but the straight one is scaled to the notch's mean over the grid, which cuts the last pitch.
    expect(Math.abs(own - straight)).toBeLessThan(0.01);
  });

  test('comes back out of the address', () => {
    const reading = setupOf(`#${linkOf(drawn())}`);
    expect(reading.ok && reading.value).toEqual(drawn());
    expect(linkOf(drawn()).length).toBeLessThan(70);
  });

  test.each([
    ['#bed=1&comb=drawn', 'comb.path'],
    ['#bed=1&comb=drawn&stroke=5_5_0_0', 'comb.path'],
    ['#bed=1&comb=drawn&stroke=5_5_x_0', 'comb.path[1]'],
    ['#bed=1&comb=drawn&stroke=5_5_9', 'comb.path[1]'],
  ])('%s is refused by name', (hash, field) => {
    const reading = setupOf(hash);
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.faults.map((fault) => fault.path).join(' ')).toContain(field);
  });

  test('without a stroke the set-up says what is missing', () => {
    const reading = readSetup({ comb: { pattern: 'drawn' } });
    expect(!reading.ok && reading.faults[0]?.problem).toContain('missing');
    expect(strokeLong(path)).toBeGreaterThan(300);
  });

  test('is told in words, in both units', () => {
    expect(strokeSays(drawn().comb, 'imperial')).toMatch(/^Taken from your stroke: \d+ in of it, bent by \d+°/);
    expect(strokeSays(drawn().comb, 'metric')).toContain('mm');
    expect(strokeSays(startSetup().comb, 'metric')).toBe('');
  });
});
