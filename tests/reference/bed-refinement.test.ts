/**
 * Twice as many cells to a pitch move the coverage by less than a point: pushes off the middle, slides, a bowed tile,
 * swirls. Where lanes are shut in, whether a neck of a cell's width is open decides over a pocket, so one bed may jump by
 * up to two points under a small tile; what holds there is the mean over swirls, or over the directions of a crossed comb.
 * The figures stand in MODEL.md ("Convergence").
 */
import { describe, expect, it } from 'vitest';

import {
  coverageAt,
  crossings,
  deepQuarters,
  eights,
  halves,
  press,
  type RefinedBed,
  slide,
  steadyBeds,
  swirls,
} from './refined-beds.ts';

describe('8 → 16 cells a pitch moves coverage by less than a point', () => {
  it.each(steadyBeds)('%s', (_, one) => {
    expect(Math.abs(coverageAt(one, 16) - coverageAt(one, 8))).toBeLessThan(0.01);
  });
});

/** Tiles as they are sold, on half-inch notches: what a neck shuts in is a small share of the back. */
const combs = ['straight', 'wobble', 'fan', 'crossed', 'swirl'] as const;
const sold = [
  { notchMm: 12.7, sideMm: 305, actions: [press(100)] },
  { notchMm: 12.7, sideMm: 305, actions: [press(100), { ...slide(100, 0), strokeMm: 6 }] },
  { notchMm: 12.7, sideMm: 610, widthMm: 305, actions: [press(200)] },
  { notchMm: 12.7, sideMm: 610, widthMm: 305, actions: [press(200), { ...slide(200, 0), strokeMm: 6 }] },
];

describe('8 → 16 cells a pitch moves coverage by less than a point under tiles of 12 × 12 and 12 × 24 in, whatever the comb', () => {
  it.each(combs)('%s, pressed and moved', (pattern) => {
    for (const one of sold)
      for (const seed of [1, 2]) {
        const bed = { ...one, pattern, seed };
        expect(Math.abs(coverageAt(bed, 16) - coverageAt(bed, 8)), JSON.stringify(bed)).toBeLessThan(0.01);
      }
  });
});

const shutIn: [string, RefinedBed, readonly Partial<RefinedBed>[]][] = [
  ['half notch swirls, pressed', { ...halves, actions: [press(60)] }, swirls(8)],
  ['half notch swirls, moved', { ...halves, actions: [press(60), slide(60, 0)] }, swirls(8)],
  ['crossed, moved under a light hand', { ...eights, actions: [press(10), slide(10, 0)] }, crossings(8)],
  ['crossed, moved under a hard hand', { ...eights, actions: [press(40), slide(40, 0)] }, crossings(8)],
];

describe('8 → 16 cells a pitch where air is shut in: the mean over eight combs', () => {
  it.each(shutIn)('%s', (_, one, ways) => {
    const mean = (cells: number): number =>
      ways.reduce((sum, way) => sum + coverageAt({ ...one, ...way }, cells), 0) / ways.length;
    expect(Math.abs(mean(16) - mean(8))).toBeLessThan(0.01);
  });
});

describe('8 → 24 cells a pitch moves coverage by less than a point where lanes close one by one under a bow', () => {
  it.each([-2, -1, 1, 2])('bowed by %s mm, moved across until nearly full', (bowMm) => {
    const one = { ...deepQuarters, bowMm };
    expect(Math.abs(coverageAt(one, 24) - coverageAt(one, 8))).toBeLessThan(0.01);
  });
});
