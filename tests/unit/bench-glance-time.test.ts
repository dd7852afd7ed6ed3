import { describe, expect, it } from 'vitest';

import { defaultSetup } from '@sim/bed/defaults.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import { GlanceTime } from '@site/islands/bench/glance-time.ts';

/** A square tile of so many cells a side. */
function bedOf(side: number): BedSetup {
  const setup = defaultSetup();
  return { ...setup, cellMm: 2, tile: { ...setup.tile, lengthMm: 2 * side, widthMm: 2 * side } };
}

describe('what a glance is reckoned to take', () => {
  it('is nothing while nothing is known, and goes with the cells after that', () => {
    const time = new GlanceTime();
    expect(time.isLong(bedOf(1000))).toBe(false);
    time.note(bedOf(100), 100, true);
    // 0.01 ms a cell: 180² cells are 324 ms, 190² are 361.
    expect(time.isLong(bedOf(180))).toBe(false);
    expect(time.isLong(bedOf(190))).toBe(true);
  });

  it('follows a quicker one at once, whichever worker was so quick', () => {
    for (const isWarm of [true, false]) {
      const time = new GlanceTime();
      time.note(bedOf(100), 400, true);
      expect(time.isLong(bedOf(100))).toBe(true);
      time.note(bedOf(100), 100, isWarm);
      expect(time.isLong(bedOf(100))).toBe(false);
    }
  });

  it('is not misled by one slow moment, nor by a worker that was just begun, but believes what stays slow', () => {
    const time = new GlanceTime();
    time.note(bedOf(100), 60, true);
    time.note(bedOf(100), 900, true);
    expect(time.isLong(bedOf(100))).toBe(false);
    for (let n = 0; n < 20; n += 1) time.note(bedOf(100), 900, false);
    expect(time.isLong(bedOf(100))).toBe(false);
    for (let n = 0; n < 3; n += 1) time.note(bedOf(100), 900, true);
    expect(time.isLong(bedOf(100))).toBe(true);
  });
});
