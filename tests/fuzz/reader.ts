import type { Fault } from '@sim/input/fault.ts';

/** What a reader made of a text. */
export type Outcome = { state: 'refused'; faults?: readonly Fault[] } | { state: 'taken'; value: unknown };

/** Something of ours that reads what a stranger may have written. */
export interface Reader {
  readonly name: string;
  /** Good texts to start from; each must be taken. */
  readonly good: readonly string[];
  readonly json: boolean;
  readonly read: (text: string) => Outcome;
  /** The text of a value taken, where it can be written again: it must then be taken as the same. */
  readonly write?: (value: never) => string;
  /** What is done with a value that was taken; throws, or gives numbers that must be sound. */
  readonly use?: (value: never) => unknown;
  /** Uses are dearer than reading: at most so many in a run of the usual size. */
  readonly mostUses?: number;
  /** Values that take seconds each to use: at most three of them in a run of the usual size. */
  readonly isDear?: (value: never) => boolean;
}

export const refused = (faults?: readonly Fault[]): Outcome =>
  faults ? { state: 'refused', faults } : { state: 'refused' };
export const takenOr = (value: unknown): Outcome => (value === null ? refused() : { state: 'taken', value });
