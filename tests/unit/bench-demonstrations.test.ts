import { runBed } from '@sim/bed/run.ts';
import type { BedResult } from '@sim/bed/types.ts';
import { demonstrations, pairFacts, type DemonstrationId } from '@site/islands/bench/wall/demonstrations.ts';
import { wall } from '@site/messages/en/wall.ts';
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

describe('the words of a pair', () => {
  const said = (id: DemonstrationId, units: 'metric' | 'imperial'): string => {
    const pair = demonstrations.find((one) => one.id === id)!;
    const { ask, first, second } = wall.demonstrations[id];
    return [ask, first, second].map((say) => say(pairFacts(pair, units))).join(' ');
  };
  test('have the figures of its beds in the units of the reader', () => {
    // 2 mm are 5.04 sixty-fourths of an inch, 1.2 mm are 3.02; half an inch is 12.7 mm.
    expect(said('bow', 'imperial')).toMatch(/stands 5\/64 in higher.* 1\/2 × 1\/2 in 1\/4 × 1\/4 in$/);
    expect(said('bow', 'metric')).toMatch(/stands 2 mm higher.* 12\.7 × 12\.7 mm 6\.4 × 6\.4 mm$/);
    expect(said('butter', 'imperial')).toContain('Ribs 3/64 in deep');
    expect(said('butter', 'metric')).toContain('Ribs 1.2 mm deep');
    expect(said('skin', 'metric')).toMatch(/after 40 minutes in still air.*After 40 minutes$/);
  });
});
