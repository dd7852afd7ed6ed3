import type { Draft } from './draft.ts';
import { readDraft, writeDraft } from './read-draft.ts';

/** The little of the browser's storage that keeping needs; tests hand in their own. */
export type Shelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

export const DRAFT_KEY = 'ridge-to-bed.job';

/** Keeps the draft in this browser. @returns false when the browser keeps nothing (private window, storage full) */
export function keepDraft(shelf: Shelf | null, draft: Draft): boolean {
  try {
    shelf?.setItem(DRAFT_KEY, writeDraft(draft));
    return shelf !== null;
  } catch {
    return false;
  }
}

/** The kept draft; null when there is none or it cannot be read. */
export function keptDraft(shelf: Shelf | null): Draft | null {
  try {
    const text = shelf?.getItem(DRAFT_KEY) ?? null;
    return text === null ? null : readDraft(text);
  } catch {
    return null;
  }
}

/** The browser's shelf; null where the page may not use it. */
export function browserShelf(): Shelf | null {
  try {
    return globalThis.localStorage;
  } catch {
    return null;
  }
}
