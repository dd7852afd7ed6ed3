import type { Finish } from './finish.ts';

/** Quick pictures are timed together. */
const TOGETHER = 6;

/** What the measuring stands on; times are ms of one clock. */
export interface Measuring {
  /** Gives the graphics a picture, marked in `finish`. */
  draw: () => void;
  finish: Finish;
  now: () => number;
  /** Lets the page go on for a moment. */
  rest: () => Promise<void>;
  /** A picture slower than this, ms, is timed by itself; a quicker one is finished before anybody can ask. */
  slowMs: number;
  /** Whether there is still something to measure. */
  goesOn: () => boolean;
}

/**
 * The time a picture takes to be finished by the graphics, ms, found without waiting for them: the page goes on
 * meanwhile. The first picture is left out of it, since the graphics make themselves ready with it.
 * @returns null where the graphics were lost meanwhile
 */
export async function pictureMs(by: Measuring): Promise<number | null> {
  const draw = async (pictures: number): Promise<number | null> => {
    const from = by.now();
    for (let n = 0; n < pictures; n++) by.draw();
    while (by.finish.pending(by.now()) > 0) {
      await by.rest();
      if (!by.goesOn()) return null;
    }
    return (by.now() - from) / pictures;
  };
  if ((await draw(1)) === null) return null;
  const one = await draw(1);
  return one === null || one > by.slowMs ? one : draw(TOGETHER);
}
