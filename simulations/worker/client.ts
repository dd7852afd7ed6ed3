import { BedStopped } from '../bed/run.ts';
import type { BedFrame, BedRun, BedSetup } from '../bed/types.ts';
import { lifeName, watchLife } from './life.ts';
import { type FromWorker, type Pictures, PROTOCOL, type Task, type ToWorker } from './protocol.ts';

export interface RunListeners {
  /** Called for the pictures before the last, which the run resolves with. */
  onFrame?: (frame: BedFrame) => void;
  /** Which of them are made; all unless told. */
  pictures?: Exclude<Pictures, 'none'>;
  /** Share done, 0…1. */
  onProgress?: (share: number) => void;
}

export interface BedRunner {
  /**
   * Computes a bed in the worker. A later run takes the place of one under way or waiting, whose promise then rejects
   * with `BedStopped`; any other failure rejects with its own error.
   */
  run(setup: BedSetup, listeners?: RunListeners): Promise<BedRun>;
  /** Only combs, and takes its turn as a run does: what the trowel leaves, before a tile is laid. */
  comb(setup: BedSetup): Promise<BedFrame>;
  /** Stops what is under way or waiting. */
  cancel(): void;
  /** Stops, and lets the worker go. */
  close(): void;
}

/** What a runner needs of a worker. */
export interface WorkerLike {
  postMessage(message: ToWorker): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<FromWorker>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/** What ends a job well. */
type Answer = Extract<FromWorker, { kind: 'done' | 'combed' }>;

interface Job {
  id: number;
  setup: BedSetup;
  task: Task;
  listeners: RunListeners;
  resolve: (reply: Answer) => void;
  reject: (problem: Error) => void;
}

/** A run this young is left to end when a newer one comes: a small figure is done sooner than a worker is started. */
const PATIENCE_MS = 60;

const NOT_STARTED = 'The worker that computes beds could not be started; try once more.';

/** Starts a worker; `gone` is called when it has ended, whatever ended it. */
export type StartWorker = (gone: () => void) => WorkerLike;

const startWorker: StartWorker = (gone) => {
  const name = lifeName();
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name });
  watchLife(worker, name, gone);
  return worker;
};

/**
 * A worker of one's own for beds: one run at a time, the latest asked for wins.
 * @param start how to start a worker; only tests give their own
 */
export function createBedRunner(start: StartWorker = startWorker): BedRunner {
  let worker: WorkerLike | null = null;
  let current: Job | null = null;
  let waiting: Job | null = null;
  let patience: ReturnType<typeof setTimeout> | undefined;
  let lastId = 0;

  const end = (): void => {
    worker?.terminate();
    worker = null;
  };

  const next = (): void => {
    clearTimeout(patience);
    patience = undefined;
    current = waiting;
    waiting = null;
    if (current) post(current);
  };

  const hear = (event: MessageEvent<FromWorker>): void => {
    const reply = event.data;
    const job = current;
    if (!job || reply.id !== job.id) return;
    const stale = waiting !== null;
    switch (reply.kind) {
      case 'frame':
        if (!stale) job.listeners.onFrame?.(reply.frame);
        return;
      case 'progress':
        if (!stale) job.listeners.onProgress?.(reply.share);
        return;
      case 'done':
      case 'combed':
        next();
        if (stale) job.reject(new BedStopped());
        else job.resolve(reply);
        return;
      case 'failed':
        next();
        job.reject(stale ? new BedStopped() : new Error(reply.says));
    }
  };

  /** The worker is of no use any more: what it was at fails, and what waits gets a new one. */
  const lose = (says: string): void => {
    const failed = current;
    const stale = waiting !== null;
    end();
    next();
    failed?.reject(stale ? new BedStopped() : new Error(says));
  };

  const hire = (): WorkerLike => {
    const hired = start(() => {
      if (worker === hired) lose('The browser stopped the worker that computes beds; try once more.');
    });
    hired.onmessage = hear;
    hired.onerror = (event) => {
      if (worker === hired) lose(event.message || NOT_STARTED);
    };
    return hired;
  };

  const post = (job: Job): void => {
    try {
      worker ??= hire();
    } catch {
      lose(NOT_STARTED);
      return;
    }
    worker.postMessage({
      ...job.task,
      protocol: PROTOCOL,
      id: job.id,
      // A plain copy: a page may keep its set-up behind proxies, which cannot be posted.
      setup: JSON.parse(JSON.stringify(job.setup)) as BedSetup,
    });
  };

  const giveUp = (): void => {
    const old = current;
    end();
    next();
    old?.reject(new BedStopped());
  };

  const cancel = (): void => {
    waiting?.reject(new BedStopped());
    waiting = null;
    if (current) giveUp();
  };

  const ask = (task: Task, setup: BedSetup, listeners: RunListeners = {}): Promise<Answer> =>
    new Promise((resolve, reject) => {
      lastId += 1;
      const job: Job = { id: lastId, setup, task, listeners, resolve, reject };
      if (!current) {
        current = job;
        post(job);
        return;
      }
      waiting?.reject(new BedStopped());
      waiting = job;
      patience ??= setTimeout(giveUp, PATIENCE_MS);
    });

  return {
    run: async (setup, listeners = {}) => {
      const pictures = listeners.onFrame ? (listeners.pictures ?? 'all') : 'none';
      const reply = await ask({ kind: 'start', pictures }, setup, listeners);
      return (reply as Extract<Answer, { kind: 'done' }>).run;
    },
    comb: async (setup) => {
      const reply = await ask({ kind: 'comb' }, setup);
      return (reply as Extract<Answer, { kind: 'combed' }>).frame;
    },
    cancel,
    close: () => {
      cancel();
      end();
    },
  };
}
