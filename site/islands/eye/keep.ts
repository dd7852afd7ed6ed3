import { EYE_LEVELS, type EyeLevel } from '@quiz/eye/pulled-tile.ts';
import type { Guess } from '@quiz/eye/score.ts';
import { onOtherTab } from '@site/storage/other-tabs.ts';
import { shelfName } from '@site/storage/shelf.ts';

/** A kept guess with its tile. */
export interface KeptGuess extends Guess {
  level: EyeLevel;
  number: number;
}

const KEY = 'rtb.eye';
const MOST = 400;
/** Nobody judges so many tiles; a number beyond it was not written by this page. */
const MOST_NUMBER = 1_000_000;

const within = (value: unknown, least: number, most: number): boolean =>
  typeof value === 'number' && value >= least && value <= most;

const isGuess = (value: unknown): value is KeptGuess => {
  const one = value as Partial<KeptGuess> | null;
  return (
    typeof one === 'object' &&
    one !== null &&
    EYE_LEVELS.some((level) => level === one.level) &&
    within(one.number, 1, MOST_NUMBER) &&
    Number.isInteger(one.number) &&
    [one.guess, one.truth].every((share) => within(share, 0, 1))
  );
};

function read(text: string | null): KeptGuess[] {
  const value = JSON.parse(text ?? '[]') as unknown;
  return Array.isArray(value) ? value.filter(isGuess) : [];
}

export function keptGuesses(): KeptGuess[] {
  try {
    return read(localStorage.getItem(shelfName(KEY)));
  } catch {
    return [];
  }
}

/** Calls back with all guesses when another tab has added to them or cleared them. @returns the function that stops it */
export const onOthersGuesses = (hear: (guesses: KeptGuess[]) => void): (() => void) =>
  onOtherTab(shelfName(KEY), () => hear(keptGuesses()));

/** @returns false when the browser kept nothing; the guesses then last as long as the page */
export function keepGuesses(guesses: readonly KeptGuess[]): boolean {
  try {
    localStorage.setItem(shelfName(KEY), JSON.stringify(guesses.slice(-MOST)));
    return true;
  } catch {
    return false;
  }
}
