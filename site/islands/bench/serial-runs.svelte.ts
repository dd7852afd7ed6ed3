import { BedStopped } from '@sim/bed/run.ts';
import type { BedResult, BedSetup } from '@sim/bed/types.ts';
import { createBedRunner, type BedRunner } from '@sim/worker/client.ts';

/** A list of beds computed one after another in a worker of its own, beside the bed on the bench. */
export class SerialRuns {
  /** Share of the list done while it runs, else null. */
  share = $state<number | null>(null);
  problem = $state('');
  #runner: BedRunner | null = null;
  #turn = 0;

  /**
   * Computes each set-up in turn and hands its result over as it comes.
   * @returns true when all were done, false when stopped or failed
   */
  async run(setups: readonly BedSetup[], take: (result: BedResult, at: number) => void): Promise<boolean> {
    this.#turn += 1;
    const turn = this.#turn;
    this.#runner ??= createBedRunner();
    this.share = 0;
    this.problem = '';
    try {
      for (const [at, setup] of setups.entries()) {
        const run = await this.#runner.run(setup, {
          onProgress: (part) => {
            if (turn === this.#turn) this.share = (at + part) / setups.length;
          },
        });
        if (turn !== this.#turn) return false;
        take(run.result, at);
        this.share = (at + 1) / setups.length;
      }
      this.share = null;
      return true;
    } catch (problem) {
      if (turn !== this.#turn) return false;
      this.share = null;
      if (!(problem instanceof BedStopped)) this.problem = problem instanceof Error ? problem.message : String(problem);
      return false;
    }
  }

  stop(): void {
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
