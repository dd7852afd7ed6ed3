/** Undo and redo over any unchanging value. */
export interface History<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
  /** Which box the last change was made in; further typing there belongs to the same step. */
  readonly touched: string | null;
}

const MOST_STEPS = 100;

export const startHistory = <T>(present: T): History<T> => ({ past: [], present, future: [], touched: null });

/**
 * Takes a change in.
 * @param touched the box it was made in, so that a word typed letter by letter is one step; null for a step of its own
 */
export function change<T>(history: History<T>, next: T, touched: string | null = null): History<T> {
  if (next === history.present) return history;
  const sameStep = touched !== null && touched === history.touched;
  return {
    past: sameStep ? history.past : [...history.past, history.present].slice(-MOST_STEPS),
    present: next,
    future: [],
    touched,
  };
}

export function undo<T>(history: History<T>): History<T> {
  const before = history.past.at(-1);
  if (before === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present: before,
    future: [history.present, ...history.future],
    touched: null,
  };
}

export function redo<T>(history: History<T>): History<T> {
  const [after, ...rest] = history.future;
  if (after === undefined) return history;
  return { past: [...history.past, history.present], present: after, future: rest, touched: null };
}
