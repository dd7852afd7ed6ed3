import { isLaid } from '@sim/view/laid.ts';
import type { BedShown } from '@sim/view/scene/bench-view.ts';

import type { BedProgress } from '../bed-run.svelte.ts';
import { AT_REST } from '../sway.ts';

/** Combed, set, pulled. */
export type WallStep = 0 | 1 | 2;

/** What one half of the wall shows; null until its bed has a picture. */
export function wallShown(bed: BedProgress, step: WallStep): BedShown | null {
  const { frames, setup, result } = bed;
  const combed = frames[0];
  const last = frames.at(-1);
  if (!combed || !last || !setup) return null;
  const done = step > 0 && result !== null && isLaid(last);
  const pulled = done && step === 2;
  return {
    setup,
    frame: done ? last : combed,
    tile: pulled ? 'turned' : done ? 'down' : 'away',
    look: 'solid',
    pulled,
    trowel: null,
    cut: null,
    neighbours: false,
    air: [],
    sway: AT_REST,
  };
}
