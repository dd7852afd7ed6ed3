import { writeRound, type ClassRound } from './class-round.ts';
import { cleanName } from './clean-text.ts';
import { readHandInText, type HandIn, type Refusal } from './hand-in.ts';

export const MOST_FILES = 500;
export const MOST_FILE_BYTES = 1_000_000;
/** Hand-ins that one round holds. */
export const MOST_HAND_INS = 1000;

/** What was dropped, pasted or scanned: a name to call it by, its size, and its text once the size was found fit. */
export interface Dropped {
  name: string;
  bytes: number;
  /** Null where it is no text (not UTF-8). */
  text: () => Promise<string | null>;
}

export interface Refused {
  /** The file's name, made safe to show. */
  from: string;
  why: Refusal;
}

export interface Taken {
  from: string;
  handIn: HandIn;
  nameCleaned: boolean;
}

export interface Collected {
  taken: Taken[];
  refused: Refused[];
}

/** Two hand-ins are the same work when round, seat, name and answers agree; another try at a seat is not. */
const sameness = (handIn: HandIn): string =>
  JSON.stringify([writeRound(handIn.round), handIn.seat, handIn.name.toLowerCase(), handIn.answers]);

/** Why a hand-in that could be read is not one of this round; null when it is. */
function foreign(handIn: HandIn, round: ClassRound): Refusal | null {
  if (handIn.round.bank !== round.bank) return 'other-bank';
  // The day it was due may be moved; what was asked may not.
  const asked = (one: ClassRound): string => writeRound({ ...one, due: null });
  return asked(handIn.round) === asked(round) ? null : 'other-round';
}

/**
 * Takes many hand-ins at once, each by itself: a bad one is named with its reason and the good ones still count. No
 * more than `MOST_FILES` are taken in one go, and the round holds `MOST_HAND_INS` at most.
 * @param before hand-ins the desk already holds
 * @param progress called after each with the share done
 */
export async function collect(
  dropped: readonly Dropped[],
  round: ClassRound,
  before: readonly HandIn[],
  progress: (share: number) => void = () => undefined,
): Promise<Collected> {
  const taken: Taken[] = [];
  const refused: Refused[] = [];
  const seen = new Set(before.map(sameness));
  for (const [at, file] of dropped.entries()) {
    const from = cleanName(file.name) || '?';
    const refuse = (why: Refusal): void => void refused.push({ from, why });
    if (at >= MOST_FILES) refuse('too-many');
    else if (file.bytes > MOST_FILE_BYTES) refuse('too-large');
    else {
      const text = await file.text();
      const found =
        text === null ? [{ ok: false as const, why: 'wrong-type' as const }] : readHandInText(text, MOST_FILES + 1);
      for (const [place, reading] of found.entries()) {
        if (place >= MOST_FILES || taken.length >= MOST_FILES) {
          refuse('too-many');
          break;
        }
        if (!reading.ok) {
          refuse(reading.why);
          continue;
        }
        const { handIn } = reading;
        const why =
          foreign(handIn, round) ??
          (seen.has(sameness(handIn)) ? 'duplicate' : before.length + taken.length >= MOST_HAND_INS ? 'full' : null);
        if (why) refuse(why);
        else {
          seen.add(sameness(handIn));
          taken.push({ from, handIn, nameCleaned: reading.nameCleaned });
        }
      }
    }
    progress((at + 1) / dropped.length);
  }
  return { taken, refused };
}
