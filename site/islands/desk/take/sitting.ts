import { readRound, writeRound, MOST_SEATS, type ClassRound } from '@quiz/records/class-round.ts';

/** A learner's sitting of a class's round, kept on the learner's own device until it is handed in. */
export interface Sitting {
  readonly round: ClassRound;
  readonly name: string;
  readonly seat: number;
  readonly answers: readonly string[];
}

const KEY = 'ridge-to-bed.sitting';

/** The round in an address: the part after `#`. */
export const roundInAddress = (hash: string): ClassRound | null => readRound(hash.replace(/^#/, ''));

/** What a learner typed for the seat as a number; null when it is none. */
export function readSeat(text: string): number | null {
  const seat = /^\d{1,2}$/.test(text.trim()) ? Number(text) : NaN;
  return seat >= 1 && seat <= MOST_SEATS ? seat : null;
}

/** @returns false when the browser keeps nothing */
export function keepSitting(sitting: Sitting): boolean {
  try {
    localStorage.setItem(KEY, JSON.stringify({ ...sitting, round: writeRound(sitting.round) }));
    return true;
  } catch {
    return false;
  }
}

/** The kept sitting of this round, if there is one. */
export function keptSitting(round: ClassRound): Sitting | null {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? 'null') as Partial<Record<keyof Sitting, unknown>> | null;
    if (!kept || kept.round !== writeRound(round)) return null;
    const { name, seat, answers } = kept;
    const whole =
      typeof name === 'string' &&
      typeof seat === 'number' &&
      Array.isArray(answers) &&
      answers.length === round.items &&
      answers.every((answer) => typeof answer === 'string');
    return whole ? { round, name, seat, answers } : null;
  } catch {
    return null;
  }
}
