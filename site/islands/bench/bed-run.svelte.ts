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

  /**
   * Computes a bed; the latest asked for wins.
   * @param live shows its pictures as they come; otherwise the bed before stands until this one is done
   * @returns the result, or null when another took its place
   */
  async run(setup: BedSetup, live = true): Promise<BedResult | null> {
    this.#forget();
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
          if (!live) return;
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
      this.result = null;
      if (!(problem instanceof BedStopped)) this.problem = problem instanceof Error ? problem.message : String(problem);
      return null;
    }
  }

  /** A coarse bed at once, the full one when the hand rests and the coarse one has been seen. */
  glance(coarse: BedSetup, full: BedSetup, live = true): void {
    const from = performance.now();
    void this.run(coarse, live).then((result) => {
      if (!result) return;
      const left = REST_MS - (performance.now() - from);
      this.#rest = setTimeout(() => void this.run(full, live), Math.max(0, left));
    });
  }

  /** Whatever was asked for before is asked for no more. */
  #forget(): void {
    clearTimeout(this.#rest);
    this.#shown.drop();
    this.#turn += 1;
  }

  stop(): void {
    this.#forget();
    // The bed before may still stand; what came of it is no answer to what was asked since.
    if (this.share !== null) this.result = null;
    this.#runner?.cancel();
    this.share = null;
  }

  close(): void {
    this.stop();
    this.#runner?.close();
    this.#runner = null;
  }
}
