import { actOn } from './act.ts';
import { type Bed, settle, startBed } from './bed.ts';
import { coverage } from './contact.ts';
import { combBed } from './fill.ts';
import { bedFrame, combedFrame } from './frame.ts';
import { type Lift, liftedFrame, liftTile } from './lift.ts';
import { outcome } from './outcome.ts';
import { press, withWeight } from './press.ts';
import type { BedFrame, BedHooks, BedRun, BedSetup, HistoryEntry } from './types.ts';

/** Thrown when a caller's `onProgress` asked to stop. */
export class BedStopped extends Error {
  constructor() {
    super('The run was stopped.');
    this.name = 'BedStopped';
  }
}

/** A picture is sent after this many steps. */
const STEPS_A_FRAME = 6;

/** Share of a whole run that combing and laying take. */
const LAID = 0.1;

/** Combs as `runBed` does, and lays nothing on it: its first picture alone. */
export const combOnly = (setup: BedSetup): BedFrame => combedFrame(combBed(setup), setup);

/**
 * Combs, lays and works one tile, and pulls it.
 * @param setup a complete set-up, see `readSetup`
 * @returns the figures and the last picture; the same input gives the same output anywhere
 * @throws BedStopped when `hooks.onProgress` returns true
 * @throws RangeError when something is done after a lift (`readSetup` refuses it first)
 */
export function runBed(setup: BedSetup, hooks: BedHooks = {}): BedRun {
  const report = (share: number): void => {
    if (hooks.onProgress?.(share) === true) throw new BedStopped();
  };
  report(0);
  const bed = startBed(setup, (grid) => (hooks.onCombed ?? hooks.onFrame)?.(combedFrame(grid, setup)));
  report(LAID / 2);
  press(bed, withWeight(bed, { forceN: 0, atX: 0, atY: 0 }));
  settle(bed);
  const lastAction = setup.actions.length - 1;
  if (lastAction >= 0) hooks.onFrame?.(bedFrame(bed, -1));
  const history: HistoryEntry[] = [];
  let applied = bed.weightN;
  let shown = bed.steps;
  let lift: Lift | null = null;
  const picture = (number: number): BedFrame => {
    const frame = bedFrame(bed, number);
    return lift ? liftedFrame(frame, lift) : frame;
  };
  setup.actions.forEach((action, number) => {
    if (lift) throw new RangeError('A lifted tile cannot be worked on; put the lift last.');
    if (action.do === 'lift') lift = liftTile(bed);
    const before = bed.slidMm;
    applied = actOn(bed, action, (share, offset) => {
      report(LAID + ((1 - LAID) * (number + share)) / setup.actions.length);
      if (!hooks.onFrame || bed.steps - shown < STEPS_A_FRAME) return;
      shown = bed.steps;
      hooks.onFrame(bedFrame(bed, number, offset));
    });
    // What a lift has parted is not moved on.
    if (!lift) settle(bed);
    history.push({
      action: number,
      coverage: coverage(bed),
      tileHeightMm: bed.height,
      loadN: lift ? 0 : carried(bed, applied),
      slideMm: bed.slidMm - before,
    });
    if (number < lastAction) hooks.onFrame?.(picture(number));
  });
  report(1);
  const last = lift as Lift | null;
  return {
    result: {
      ...outcome(bed, history, last ? 0 : carried(bed, applied)),
      ...(last && { lifted: last.figures }),
    },
    frame: picture(lastAction),
  };
}

/** What the bed carries: the load on it, as far as it bears it; with no load at all, what it would bear. */
const carried = (bed: Bed, applied: number): number =>
  applied > 0 ? Math.min(applied, bed.load.forceN) : bed.load.forceN;
