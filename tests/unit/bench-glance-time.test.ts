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
    expect(time.of(bedOf(1000))).toBe(0);
    time.note(bedOf(100), 100, true);
    // 0.01 ms a cell.
    expect(time.of(bedOf(100))).toBeCloseTo(100);
    expect(time.of(bedOf(190))).toBeCloseTo(361);
  });

  it('follows a quicker one at once, whichever worker was so quick', () => {
    for (const isWarm of [true, false]) {
      const time = new GlanceTime();
      time.note(bedOf(100), 400, true);
      time.note(bedOf(100), 100, isWarm);
      expect(time.of(bedOf(100))).toBeCloseTo(100);
    }
  });

  it('is not misled by one slow moment, nor by a worker that was just begun, but believes what stays slow', () => {
    const time = new GlanceTime();
    time.note(bedOf(100), 60, true);
    time.note(bedOf(100), 900, true);
    const before = time.of(bedOf(100));
    expect(before).toBeLessThan(350);
    for (let n = 0; n < 20; n += 1) time.note(bedOf(100), 900, false);
    expect(time.of(bedOf(100))).toBe(before);
    for (let n = 0; n < 3; n += 1) time.note(bedOf(100), 900, true);
    expect(time.of(bedOf(100))).toBeGreaterThan(600);
  });
});
