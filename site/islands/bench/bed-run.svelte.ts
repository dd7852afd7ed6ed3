import { BedStopped } from '@sim/bed/run.ts';
import type { BedFrame, BedResult, BedSetup } from '@sim/bed/types.ts';
import { createBedRunner, type BedRunner } from '@sim/worker/client.ts';

import { keepFrame, shareFloor } from './frames.ts';
import { onceAPicture } from './once-a-picture.ts';

/** A slider at rest for this long gets the full run. */
const REST_MS = 220;

/** One bed under way: its pictures as they come, and what came of it. */
export class BedProgress {
  /** The set-up the pictures belong to. */
  setup = $state.raw<BedSetup | null>(null);
  frames = $state.raw<BedFrame[]>([]);
  result = $state.raw<BedResult | null>(null);
  /** Share done while a run is under way, else null. */
  share = $state<number | null>(null);
  /** What went wrong, in the solver's words. */
  problem = $state('');
  #runner: BedRunner | null = null;
  #rest: ReturnType<typeof setTimeout> | undefined;
  #turn = 0;
  readonly #shown = onceAPicture();

  /** Computes a bed; the latest asked for wins. Resolves to the result, or null when another took its place. */
  async run(setup: BedSetup): Promise<BedResult | null> {
    clearTimeout(this.#rest);
    this.#turn += 1;
    this.#shown.drop();
    const turn = this.#turn;
    this.#runner ??= createBedRunner();
    this.share = 0;
    this.problem = '';
    let frames: BedFrame[] = [];
    try {
      const run = await this.#runner.run(setup, {
        onFrame: (frame) => {
          if (turn !== this.#turn) return;
          frames = keepFrame(frames, shareFloor(frames[0], frame));
          this.#shown.do(() => {
            this.setup = setup;
            this.frames = frames;
            this.result = null;
          });
        },
        onProgress: (share) => {
          if (turn === this.#turn) this.share = share;
        },
      });
      if (turn !== this.#turn) return null;
      this.#shown.drop();
      frames = keepFrame(frames, shareFloor(frames[0], run.frame));
      this.setup = setup;
      this.frames = frames;
      this.result = run.result;
      this.share = null;
      return run.result;
    } catch (problem) {
      if (turn !== this.#turn) return null;
      this.share = null;
      if (!(problem instanceof BedStopped)) this.problem = problem instanceof Error ? problem.message : String(problem);
      return null;
    }
  }

  /** A coarse bed at once, the full one when the hand rests. */
  glance(coarse: BedSetup, full: BedSetup): void {
    void this.run(coarse);
    this.#rest = setTimeout(() => void this.run(full), REST_MS);
  }

  stop(): void {
    clearTimeout(this.#rest);
    this.#shown.drop();
    this.#turn += 1;
    this.#runner?.cancel();
    this.share = null;
  }

  close(): void {
    this.stop();
    this.#runner?.close();
    this.#runner = null;
  }
}
