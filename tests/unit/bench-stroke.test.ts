import { keptStroke, readStroke, type Spot } from '@site/islands/bench/stroke.ts';
import { describe, expect, test } from 'vitest';

/** A drawn stroke: places along a curve given by a share 0…1. */
const drawn = (place: (share: number) => Spot): Spot[] => Array.from({ length: 80 }, (_, n) => place(n / 79));

describe('a stroke of the trowel', () => {
  test.each([0, 30, 90, 135])('straight at %i°', (angle) => {
    const way = (angle * Math.PI) / 180;
    const read = readStroke(drawn((share) => [300 * share * Math.cos(way), 300 * share * Math.sin(way)]));
    expect(read).toMatchObject({ shape: 'straight', directionDeg: angle });
    // A resting hand's last step is not counted.
    expect(Math.abs((read?.longMm ?? 0) - 300)).toBeLessThan(12);
  });

  test('there and back is one direction', () => {
    const read = readStroke(drawn((share) => [300 * (share < 0.5 ? 2 * share : 2 - 2 * share), 0]));
    expect(read).toMatchObject({ shape: 'straight', directionDeg: 0 });
  });

  test('round and round is round, with its turns counted', () => {
    const read = readStroke(drawn((share) => [80 * Math.cos(10 * share), 80 * Math.sin(10 * share)]));
    expect(read?.shape).toBe('round');
    // Ten radians, less the two half steps that have no turn of their own.
    expect(read?.turnDeg).toBeGreaterThan(540);
    expect(read?.turnDeg).toBeLessThan(574);
  });

  test('an arc from the wrist is bent, by its angle', () => {
    const read = readStroke(drawn((share) => [300 * Math.cos(1.2 * share), 300 * Math.sin(1.2 * share)]));
    expect(read?.shape).toBe('bent');
    // 1.2 radians are 68.8 degrees.
    expect(Math.abs((read?.turnDeg ?? 0) - 68.8)).toBeLessThan(4);
  });

  test('a line that sways is swaying, and keeps its direction', () => {
    const read = readStroke(drawn((share) => [400 * share, 25 * Math.sin(6 * Math.PI * share)]));
    expect(read).toMatchObject({ shape: 'swaying', directionDeg: 0 });
  });

  test('two strokes at right angles cross', () => {
    const read = readStroke(
      drawn((share) => (share < 0.5 ? [400 * share, 0] : [200 - 200 * (share - 0.5), 400 * (share - 0.5)])),
    );
    expect(read?.shape).toBe('crossing');
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

  test('is kept in few places, none of the hand farther than two millimetres and a half from it', () => {
    const hand = drawn((share) => [400 * share - 200, 60 * Math.sin(5 * share)]);
    const kept = keptStroke(hand);
    expect(kept.length).toBeLessThan(14);
    for (const [x, y] of hand) {
      const off = kept.slice(1).map(([bx, by], n) => {
        const [ax, ay] = kept[n]!;
        const along = Math.max(
          0,
          Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / ((bx - ax) ** 2 + (by - ay) ** 2)),
        );
        return Math.hypot(x - ax - along * (bx - ax), y - ay - along * (by - ay));
      });
      expect(Math.min(...off)).toBeLessThan(2.5);
    }
  });

  test('a scribble keeps no more places than an address can carry', () => {
    const scribble = drawn((share) => [150 * Math.sin(91 * share), 90 * Math.cos(67 * share)]);
    expect(keptStroke(scribble).length).toBeLessThanOrEqual(32);
  });
});
