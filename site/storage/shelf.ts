import { checksum } from '@quiz/records/checksum.ts';

const LEARNER = 'rtb.learner';

/**
 * Name under which a learner's own work is kept. On its own the site keeps one record a browser. In a package the
 * learning platform says who the learner is, and a classroom's machine serves many: each then has a shelf of their own,
 * for as long as the tab stays with the platform.
 * @param base name of the shelf on a browser of one's own
 */
export function shelfName(base: string): string {
  try {
    const learner = sessionStorage.getItem(LEARNER);
    return learner === null ? base : `${base}.${learner}`;
  } catch {
    return base; // storage is closed in this browser: nothing is kept under any name
  }
}

/**
 * Turns to a learner's own shelf. Frames of the same site in this tab turn with it.
 * @param id who the learner is, in the platform's words; only a checksum of it is kept. Empty: the browser's own shelf
 */
export function useShelfOf(id: string): void {
  try {
    if (id === '') sessionStorage.removeItem(LEARNER);
    else sessionStorage.setItem(LEARNER, checksum(id));
  } catch {
    // Nothing is kept here at all, so nothing can be mixed up.
  }
}
