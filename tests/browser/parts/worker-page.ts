/** The page's side of the worker as the site uses it, laid open for tests: built by `serve-part.ts`. */
import { createBedRunner, type BedRunner, type RunListeners } from '@sim/worker/client.ts';
import type { BedSetup } from '@sim/bed/types.ts';

/** What a run said, in order: a share of progress, a picture by its action and cells, how it ended. */
export type Said =
  | { at: number; progress: number }
  | { at: number; frame: number; cells: number; gap: number }
  | { at: number; coverage: number }
  | { at: number; error: string; says: string };

declare global {
  interface Window {
    bedRunner: () => BedRunner;
    /** Runs a bed and notes all that is said about it under a number; resolves when it has ended. */
    noted: (
      runner: BedRunner,
      setup: BedSetup,
      at: number,
      hear?: (said: Said) => void,
      pictures?: RunListeners['pictures'],
    ) => Promise<void>;
    said: Said[];
    /** Workers started by the page, so that a test can end one behind the page's back. */
    workers: Worker[];
  }
}

window.said = [];
window.workers = [];
window.Worker = class extends Worker {
  constructor(url: string | URL, options?: WorkerOptions) {
    super(url, options);
    window.workers.push(this);
  }
};
window.bedRunner = () => createBedRunner();
window.noted = async (runner, setup, at, hear, pictures) => {
  const note = (said: Said): void => {
    window.said.push(said);
    hear?.(said);
  };
  try {
    const { result } = await runner.run(setup, {
      ...(pictures && { pictures }),
      onProgress: (progress) => note({ at, progress }),
      onFrame: ({ action, columns, rows, gapMm }) =>
        note({ at, frame: action, cells: columns * rows, gap: gapMm.length }),
    });
    note({ at, coverage: result.coverage });
  } catch (problem) {
    const error = problem as Error;
    note({ at, error: error.name, says: error.message });
  }
};
