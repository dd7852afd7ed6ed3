import { readStroke, type Spot } from '@site/islands/bench/stroke.ts';
import { describe, expect, test } from 'vitest';

/** A drawn stroke: places along a curve given by a share 0…1. */
const drawn = (place: (share: number) => Spot): Spot[] => Array.from({ length: 80 }, (_, n) => place(n / 79));

describe('a stroke of the trowel', () => {
  test.each([0, 30, 90, 135])('straight at %i°', (angle) => {
    const way = (angle * Math.PI) / 180;
    const read = readStroke(drawn((share) => [300 * share * Math.cos(way), 300 * share * Math.sin(way)]));
    expect(read).toEqual({ pattern: 'straight', directionDeg: angle });
  });

  test('there and back is one direction', () => {
    const read = readStroke(drawn((share) => [300 * (share < 0.5 ? 2 * share : 2 - 2 * share), 0]));
    expect(read).toEqual({ pattern: 'straight', directionDeg: 0 });
  });

  test('round and round is a swirl', () => {
    const read = readStroke(drawn((share) => [80 * Math.cos(10 * share), 80 * Math.sin(10 * share)]));
    expect(read?.pattern).toBe('swirl');
  });

  test('an arc from the wrist is a fan', () => {
    const read = readStroke(drawn((share) => [300 * Math.cos(1.2 * share), 300 * Math.sin(1.2 * share)]));
    expect(read?.pattern).toBe('fan');
  });

  test('a line that sways is wobbling, and keeps its direction', () => {
    const read = readStroke(drawn((share) => [400 * share, 25 * Math.sin(6 * Math.PI * share)]));
    expect(read).toEqual({ pattern: 'wobble', directionDeg: 0 });
  });

  test('two strokes at right angles are crossed', () => {
    const read = readStroke(
      drawn((share) => (share < 0.5 ? [400 * share, 0] : [200 - 200 * (share - 0.5), 400 * (share - 0.5)])),
    );
    expect(read?.pattern).toBe('crossed');
  });

  test('a twitch says nothing', () => {
    expect(
      readStroke([
        [0, 0],
        [3, 1],
        [8, 2],
      ]),
    ).toBeNull();
    expect(readStroke([])).toBeNull();
  });
});
