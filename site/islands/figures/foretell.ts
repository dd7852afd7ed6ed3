import type { ModuleSlug } from '@lessons/course.ts';

/** How a guessed share compares with the truth; both 0…1. Ten points either way is close. */
export type Closeness = 'close' | 'high' | 'low';
const NEAR = 0.1;

export const closeness = (guess: number, truth: number): Closeness =>
  Math.abs(guess - truth) <= NEAR + 1e-9 ? 'close' : guess > truth ? 'high' : 'low';

/**
 * Puts a guess and its truth into the learner's record.
 * @returns false where the browser keeps none; the lesson then goes on without
 */
export async function keepGuess(
  module: ModuleSlug,
  figure: string,
  guess: number,
  truth: number,
  at: number,
): Promise<boolean> {
  try {
    // The record's code is fetched with the first guess, not with the page.
    const { learnerRecord } = await import('@site/storage/record/record.ts');
    const keeper = learnerRecord();
    await keeper.ready;
    await keeper.add({ predictions: [{ id: `${figure}@${at}`, module, figure, of: 'share', guess, truth, at }] });
    return true;
  } catch {
    return false;
  }
}
