import type { BedProgress } from './bed-run.svelte.ts';

/** Tells when a bed keeps one waiting. Each run has its own patience: under a moving hand one follows on the other. */
export class Patience {
  /** The run under way has taken longer than that. */
  over = $state(false);

  /**
   * To be made while a component is.
   * @param ms how long is not long yet
   * @param waits whether anybody waits for the run
   */
  constructor(bed: () => BedProgress, ms: number, waits: () => boolean) {
    $effect(() => {
      this.over = false;
      if (!waits() || bed().begun === 0) return undefined;
      const timer = setTimeout(() => (this.over = true), ms);
      return () => clearTimeout(timer);
    });
  }
}
