import type { ReviewCard } from './shape.ts';

/** One sitting stays short: what is over it waits for tomorrow. */
export const MOST_A_DAY = 8;
const MINUTES_EACH = 1.5;

const DAY_MS = 24 * 3600 * 1000;
/** Clocks of two devices differ by less. */
const CLOCKS_DIFFER_MS = 3600 * 1000;

/** The day a card comes up for the first time lies this far after the day its module was done. */
export const FIRST_WAIT_MS = DAY_MS;

/**
 * Whether a card is to be asked at `at`. One that was written at a time still to come was dated by a clock that ran
 * ahead: it would lie in wait for years, so it is asked now, which dates it anew.
 */
export const isDue = (card: ReviewCard, at: number): boolean =>
  card.due <= at || (card.lastReview ?? card.due - FIRST_WAIT_MS) > at + CLOCKS_DIFFER_MS;

/** Outcomes due at `at`, the longest overdue first, no more than a sitting holds. */
export const dueCards = (cards: ReviewCard[], at: number): ReviewCard[] =>
  cards
    .filter((card) => isDue(card, at))
    .sort((a, b) => a.due - b.due || a.outcome.localeCompare(b.outcome))
    .slice(0, MOST_A_DAY);

/** Whole minutes that so many reviews take. */
export const minutesFor = (count: number): number => Math.ceil(count * MINUTES_EACH);

const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** A small count in words, as one says it. */
export const numberWord = (count: number): string => small[count] ?? String(count);
