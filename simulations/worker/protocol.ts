import type { BedFrame, BedRun, BedSetup } from '../bed/types.ts';

/** Raised when a message changes its meaning; both sides refuse another's. */
export const PROTOCOL = 2;

/** Which pictures are made besides the last: each costs its making and a copy. */
export type Pictures = 'none' | 'combed' | 'all';

/** To the worker. A run is stopped by ending the worker: it computes without a pause. */
export type ToWorker = { protocol: typeof PROTOCOL; id: number; setup: BedSetup } & Task;

/** What is asked of it: a whole run, or to comb and lay nothing on it. */
export type Task = { kind: 'start'; pictures: Pictures } | { kind: 'comb' };

/** From the worker; `id` is that of the message it answers. */
export type FromWorker =
  | { kind: 'frame'; id: number; frame: BedFrame }
  | { kind: 'progress'; id: number; share: number }
  | { kind: 'done'; id: number; run: BedRun }
  | { kind: 'combed'; id: number; frame: BedFrame }
  | { kind: 'failed'; id: number; says: string };

/** Buffers of a picture, to hand over instead of copying. */
export const buffersOf = (frame: BedFrame): ArrayBuffer[] =>
  [frame.mortarMm.buffer, frame.floorMm.buffer, frame.gapMm.buffer, frame.state.buffer] as ArrayBuffer[];
