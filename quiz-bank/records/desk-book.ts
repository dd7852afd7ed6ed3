import * as z from 'zod/mini';

import { listOf, textUpTo } from '../../simulations/input/fields.ts';
import type { Reading } from '../../simulations/input/fault.ts';
import { read } from '../../simulations/input/read.ts';
import { MOST_SEATS, readRound, writeRound, type ClassRound } from './class-round.ts';
import { cleanName } from './clean-text.ts';
import { MOST_HAND_INS } from './collect.ts';
import { readHandInLine, type HandIn } from './hand-in.ts';

/** A round as the desk keeps it: what was set, the people at the seats, and what came in. */
export interface DeskRound {
  round: ClassRound;
  title: string;
  /** Names by seat, the first at seat 1; empty where nobody is named. */
  seats: readonly string[];
  handIns: readonly HandIn[];
  /** The hand-ins as they came, so that they are kept and carried as written. */
  lines: readonly string[];
}

/** Everything the desk keeps; it never leaves the instructor's browser but as a file the instructor saves. */
export interface DeskBook {
  version: 1;
  rounds: readonly DeskRound[];
}

export const MOST_ROUNDS = 50;

export const deskBookSchema = z.strictObject({
  ridgeToBed: z.literal('desk'),
  version: z.literal(1),
  rounds: listOf(
    z.strictObject({
      round: textUpTo(100),
      title: textUpTo(120),
      seats: listOf(textUpTo(400), 1, MOST_SEATS),
      // A packed text of the longest that is unpacked, its mark and its checksum.
      lines: listOf(textUpTo(12_100), 0, MOST_HAND_INS),
    }),
    0,
    MOST_ROUNDS,
  ),
});

/** The book as it is kept and carried. */
export const writeBook = (book: DeskBook): z.infer<typeof deskBookSchema> => ({
  ridgeToBed: 'desk',
  version: 1,
  rounds: book.rounds.map(({ round, title, seats, lines }) => ({
    round: writeRound(round),
    title,
    seats: [...seats],
    lines: [...lines],
  })),
});

/** The rounds as they were written; one, or a hand-in in it, that cannot be read is left out and counted. */
export function openBook(written: z.infer<typeof deskBookSchema>['rounds']): { book: DeskBook; lost: number } {
  let lost = 0;
  const rounds = written.flatMap((kept): DeskRound[] => {
    const round = readRound(kept.round);
    if (!round) {
      lost += 1;
      return [];
    }
    const good = kept.lines.flatMap((line) => {
      const one = readHandInLine(line);
      if (!one.ok) lost += 1;
      return one.ok ? [{ line, handIn: one.handIn }] : [];
    });
    return [
      {
        round,
        title: cleanName(kept.title),
        seats: kept.seats.map(cleanName),
        lines: good.map(({ line }) => line),
        handIns: good.map(({ handIn }) => handIn),
      },
    ];
  });
  return { book: { version: 1, rounds }, lost };
}

/** Reads a kept book. */
export function readBook(input: unknown): Reading<{ book: DeskBook; lost: number }> {
  const reading = read(deskBookSchema, input);
  return reading.ok ? { ok: true, value: openBook(reading.value.rounds) } : reading;
}
