import type { ReviewCard } from './shape.ts';

/** One sitting stays short: what is over it waits for tomorrow. */
export const MOST_A_DAY = 8;
const MINUTES_EACH = 1.5;

/** Outcomes due at `at`, the longest overdue first, no more than a sitting holds. */
export const dueCards = (cards: ReviewCard[], at: number): ReviewCard[] =>
  cards
    .filter((card) => card.due <= at)
    .sort((a, b) => a.due - b.due || a.outcome.localeCompare(b.outcome))
    .slice(0, MOST_A_DAY);

/** Whole minutes that so many reviews take. */
export const minutesFor = (count: number): number => Math.ceil(count * MINUTES_EACH);

const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** A small count in words, as one says it. */
export const numberWord = (count: number): string => small[count] ?? String(count);
