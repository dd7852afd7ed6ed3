import { runBed } from '@sim/bed/run.ts';
import type { BedResult } from '@sim/bed/types.ts';
import { demonstrations, type DemonstrationId } from '@site/islands/bench/wall/demonstrations.ts';
import { describe, expect, test } from 'vitest';

/** What each pair tells a class must be what the solver finds; the first of a pair is the better bed unless said. */
const shows: Record<DemonstrationId, (first: BedResult, second: BedResult) => void> = {
  swirl: (first, second) => {
    expect(first.coverage).toBeGreaterThan(second.coverage + 0.1);
    expect(second.pockets.length).toBeGreaterThan(0);
  },
  along: (first, second) => expect(first.coverage).toBeGreaterThan(second.coverage + 0.08),
  bow: (first, second) => expect(first.coverage).toBeGreaterThan(second.coverage + 0.04),
  skin: (first, second) => expect(first.coverage).toBeGreaterThan(second.coverage + 0.4),
  mosaic: (first, second) => {
    expect(second.coverage).toBeGreaterThan(first.coverage);
    expect(second.riseInJoint).toBeLessThan(first.riseInJoint);
  },
  butter: (first, second) => expect(first.coverage).toBeGreaterThan(second.coverage + 0.03),
};

describe('prepared demonstrations show what they say', () => {
  test.each(demonstrations.map((pair) => [pair.id, pair] as const))('%s', (id, pair) => {
    // Half as many cells as the wall draws with: the differences are far larger than what that changes.
    const coarse = (setup: typeof pair.first): BedResult => runBed({ ...setup, cellMm: setup.cellMm * 1.4 }).result;
    const [first, second] = [coarse(pair.first), coarse(pair.second)];
    shows[id](first, second);
  });
});
