import * as z from 'zod/mini';

import { listOf, textUpTo, wholeFrom } from '../../simulations/input/fields.ts';
import { pack, unpack } from '../../simulations/input/packed.ts';
import { readText } from '../../simulations/input/read.ts';
import { checksum } from './checksum.ts';
import { MOST_ITEMS, MOST_SEATS, readRound, writeRound, type ClassRound } from './class-round.ts';
import { cleanName, nameWasCleaned } from './clean-text.ts';

/** What a learner hands in: who, which round, and the answers as given. There is no mark in it to believe. */
export interface HandIn {
  round: ClassRound;
  seat: number;
  name: string;
  /** One for each item, empty where none was given. */
  answers: readonly string[];
  /** When it was handed in, by the learner's own clock: minutes since 1970; it proves nothing. */
  at: number;
}

/** Why a hand-in is not taken; the sentence for each stands in the messages. */
export type Refusal =
  | 'empty'
  | 'too-large'
  | 'wrong-type'
  | 'truncated'
  | 'altered'
  | 'other-version'
  | 'unreadable'
  | 'other-bank'
  | 'other-round'
  | 'duplicate'
  | 'too-many'
  | 'full';

export type HandInReading = { ok: true; handIn: HandIn; nameCleaned: boolean } | { ok: false; why: Refusal };

/** No answer is longer. */
const MOST_ANSWER = 80;
const MARK = 'handin1';

const schema = z.strictObject({
  r: textUpTo(100),
  s: wholeFrom(0, MOST_SEATS),
  n: textUpTo(400),
  a: listOf(textUpTo(MOST_ANSWER), 1, MOST_ITEMS),
  t: wholeFrom(0, 1e9),
});

/**
 * A hand-in as one line of text: its mark, the packed record, and a checksum by which a line that was cut off, mistyped
 * or edited is known.
 */
export function writeHandIn({ round, seat, name, answers, at }: HandIn): string {
  const body = pack(JSON.stringify({ r: writeRound(round), s: seat, n: cleanName(name), a: answers, t: at }));
  return `${MARK}.${body}.${checksum(body)}`;
}

/** The same hand-in as a file that says in words what it is; the line in it is what counts. */
export const writeHandInFile = (handIn: HandIn): string =>
  `${JSON.stringify({ ridgeToBed: 'hand-in', round: handIn.round.code, name: cleanName(handIn.name), line: writeHandIn(handIn) }, null, 2)}\n`;

const refuse = (why: Refusal): HandInReading => ({ ok: false, why });

/** Reads one line of a hand-in, whatever it turns out to be. */
export function readHandInLine(line: string): HandInReading {
  const text = line.trim();
  if (text === '') return refuse('empty');
  const parts = /^handin(\d+)\.([\w-]*)(?:\.([0-9a-f]*))?$/.exec(text);
  if (!parts) return refuse(text.startsWith('handin') ? 'altered' : 'unreadable');
  const [, version, body = '', sum = ''] = parts;
  if (version !== '1') return refuse('other-version');
  if (sum.length < 8) return refuse('truncated');
  if (checksum(body) !== sum) return refuse('altered');
  const unpacked = unpack(body);
  if (unpacked === null) return refuse('unreadable');
  const read = readText(schema, unpacked);
  if (!read) return refuse('unreadable');
  const { r, s, n, a, t } = read;
  const round = readRound(r);
  if (!round || a.length !== round.items) return refuse('unreadable');
  const handIn = { round, seat: s, name: cleanName(n), answers: a, at: t };
  return { ok: true, handIn, nameCleaned: nameWasCleaned(n) };
}

/** A hand-in among other words, without the stop that ends a sentence after it. */
const IN_TEXT = /\bhandin\d+\.[\w.-]*[\w-]/g;

/**
 * Reads what a file holds: our own file, or hand-ins in any text, as in a message that a learner wrote round one. One
 * reading for each hand-in found, `most` at most; a text without any is refused once.
 */
export function readHandInText(text: string, most = 1000): HandInReading[] {
  const trimmed = text.replace(/^\uFEFF/, '').trim();
  if (trimmed === '') return [refuse('empty')];
  if (!trimmed.startsWith('{')) {
    const found = trimmed.match(IN_TEXT)?.slice(0, most).map(readHandInLine);
    return found ?? [refuse('unreadable')];
  }
  try {
    const file = JSON.parse(trimmed) as { ridgeToBed?: unknown; line?: unknown };
    if (file.ridgeToBed !== 'hand-in' || typeof file.line !== 'string') return [refuse('wrong-type')];
    return [readHandInLine(file.line)];
  } catch {
    return [refuse('truncated')];
  }
}
