import type { Draw } from '../engine/draw.ts';
import type { Say } from '../engine/say.ts';

/** Two ways across a room, at right angles. Questions about direction are asked in these, so that they need the job. */
export interface Bearings {
  /** Which pair of words is used. */
  pair: 0 | 1 | 2;
  /** True when the long side of the tile (or whatever the job names first) runs the first way. */
  longFirst: boolean;
}

export const drawBearings = (draw: Draw): Bearings => ({ pair: draw.pick([0, 1, 2]), longFirst: draw.chance(0.5) });

/** "from the window to the door" and "from wall to wall", in the order the job has them: along the long side, across it. */
export function sayBearings({ pair, longFirst }: Bearings, say: Say): { along: string; across: string } {
  const first = say.t(`way-${pair}-first`);
  const second = say.t(`way-${pair}-second`);
  return longFirst ? { along: first, across: second } : { along: second, across: first };
}
