import { describe, expect, test } from 'vitest';

import { runBed } from '@sim/bed/run.ts';
import { EYE_LEVELS, eyeSetup } from '@quiz/eye/pulled-tile.ts';

/** Tiles a level that are set and pulled here. */
const TILES = 60;

/**
 * An eye that only ever sees good backs learns to say “good”. Bounds by hand: at every level at least one back in twelve
 * is poor, one in twenty full, and no band of ten points holds more than two in five.
 */
describe.each(EYE_LEVELS)('the level %s', (level) => {
  const found = Array.from({ length: TILES }, (_, number) => runBed(eyeSetup(level, number)).result.coverage);
  const shareOf = (from: number, to: number): number =>
    found.filter((one) => one >= from && one < to).length / found.length;

  test('has poor, middling and full backs', () => {
    expect(shareOf(0, 0.6)).toBeGreaterThan(1 / 12);
    expect(shareOf(0.6, 0.75)).toBeGreaterThan(1 / 8);
    expect(shareOf(0.75, 0.9)).toBeGreaterThan(1 / 8);
    expect(shareOf(0.9, 1.01)).toBeGreaterThan(1 / 20);
  });
  test('crowds into no band', () => {
    for (let from = 0.2; from < 1; from += 0.1) expect(shareOf(from, from + 0.1)).toBeLessThan(2 / 5);
  });
});
