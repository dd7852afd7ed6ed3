import { onceAPicture } from '@site/islands/bench/once-a-picture.ts';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';

let pictures: (() => void)[] = [];
/** The page draws its next picture. */
const picture = (): void => pictures.splice(0).forEach((draw) => draw());

beforeEach(() => {
  pictures = [];
  vi.stubGlobal('requestAnimationFrame', (draw: () => void) => pictures.push(draw));
});
afterEach(() => vi.unstubAllGlobals());

describe('once with each picture', () => {
  test('the first is done at once; of what comes before the next picture, the last, with that one', () => {
    const done: number[] = [];
    const once = onceAPicture();
    for (const n of [1, 2, 3]) once.do(() => done.push(n));
    expect(done).toEqual([1]);
    picture();
    expect(done).toEqual([1, 3]);
    once.do(() => done.push(4));
    expect(done).toEqual([1, 3]);
    picture();
    expect(done).toEqual([1, 3, 4]);
    picture();
    // Nothing for a whole picture: the next is done at once again.
    once.do(() => done.push(5));
    expect(done).toEqual([1, 3, 4, 5]);
  });

  test('what waits can be dropped', () => {
    const done: number[] = [];
    const once = onceAPicture();
    once.do(() => done.push(1));
    once.do(() => done.push(2));
    once.drop();
    picture();
    expect(done).toEqual([1]);
  });
});
