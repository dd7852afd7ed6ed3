import { MOST_SEATS, readRound, type ClassRound } from '@quiz/records/class-round.ts';

/** What the page of sheets is asked for: a round, and how many seats. */
export interface PaperAddress {
  readonly round: ClassRound;
  readonly seats: number;
}

/** Reads the part of the address after `#`: the round's line, then `.seats` and a number. */
export function readPaperAddress(hash: string): PaperAddress | null {
  const parts = /^#?(class1\..*?)(?:\.seats(\d{1,2}))?$/.exec(hash);
  const round = parts?.[1] === undefined ? null : readRound(parts[1]);
  const seats = Number(parts?.[2] ?? MOST_SEATS);
  return round && seats >= 1 && seats <= MOST_SEATS ? { round, seats } : null;
}
