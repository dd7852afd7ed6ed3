import { type Fences, type Finish, watchFinish } from '@sim/view/scene/finish.ts';
import { pictureMs } from '@sim/view/scene/measure-picture.ts';
import { describe, expect, test } from 'vitest';

/** Graphics that finish one picture after the other, each so many ms after it was given or the one before was done. */
function graphics(eachMs: () => number): { gl: Fences; at: { now: number } } {
  const at = { now: 0 };
  const fences = new Map<WebGLSync, number>();
  let free = 0;
  const gl: Fences = {
    SYNC_GPU_COMMANDS_COMPLETE: 0x9117,
    SYNC_STATUS: 0x9114,
    SIGNALED: 0x9119,
    fenceSync: () => {
      free = Math.max(free, at.now) + eachMs();
      const fence = {} as WebGLSync;
      fences.set(fence, free);
      return fence;
    },
    getSyncParameter: (fence) => (fences.get(fence)! <= at.now ? 0x9119 : 0x9118),
    deleteSync: (fence) => void fences.delete(fence!),
    flush: () => undefined,
  };
  return { gl, at };
}

describe('how far the graphics are', () => {
  test('pictures are finished in order, and each is timed from when the graphics could begin with it', () => {
    const { gl, at } = graphics(() => 100);
    const finish = watchFinish(gl);
    expect(finish.pending(0)).toBe(0);
    finish.mark(0);
    at.now = 10;
    finish.mark(10);
    expect(finish.pending(10)).toBe(2);
    at.now = 99;
    expect(finish.pending(99)).toBe(2);
    at.now = 100;
    expect(finish.pending(100)).toBe(1);
    expect(finish.tookMs()).toBe(100);
    at.now = 200;
    expect(finish.pending(200)).toBe(0);
    // Given at 10, but begun when the first was done.
    expect(finish.tookMs()).toBe(100);
  });

  test('what the lost graphics were given is forgotten', () => {
    const finish = watchFinish(graphics(() => Infinity).gl);
    finish.mark(0);
    expect(finish.pending(1e6)).toBe(1);
    finish.forget();
    expect(finish.pending(1e6)).toBe(0);
  });
});

/** What measuring finds with such graphics, and how many pictures it draws for it. */
async function measured(
  eachMs: () => number,
  goesOn = (): boolean => true,
): Promise<[ms: number | null, drawn: number]> {
  const { gl, at } = graphics(eachMs);
  const finish: Finish = watchFinish(gl);
  let drawn = 0;
  const ms = await pictureMs({
    draw: () => {
      drawn += 1;
      finish.mark(at.now);
    },
    finish,
    now: () => at.now,
    slowMs: 40,
    // The page comes back only so often: what is quicker than that can't be told from one picture.
    rest: () => {
      at.now += 4;
      return Promise.resolve();
    },
    goesOn,
  });
  return [ms, drawn];
}

describe('the time of a picture', () => {
  test('a slow one is timed by itself, quick ones together, and the first is left out', async () => {
    let drawn = 0;
    expect(await measured(() => (drawn++ === 0 ? 900 : 300))).toEqual([300, 2]);
    drawn = 0;
    const [ms, pictures] = await measured(() => (drawn++ === 0 ? 900 : 2));
    expect(pictures).toBe(8);
    // Six take 12 ms: found to within one look in six.
    expect(ms).toBeGreaterThanOrEqual(2);
    expect(ms).toBeLessThanOrEqual(2 + 4 / 6);
  });

  test('ends without an answer where the graphics are lost meanwhile', async () => {
    let looks = 0;
    expect(
      await measured(
        () => Infinity,
        () => ++looks < 5,
      ),
    ).toEqual([null, 1]);
  });
});
