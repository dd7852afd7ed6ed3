import * as z from 'zod/mini';

import { course } from '@lessons/course.ts';
import { outcomes, type OutcomeId } from '@lessons/outcomes.ts';
import { faultSentence } from '@sim/input/fault.ts';
import { listOf, numberFrom, oneOf, textUpTo, wholeFrom } from '@sim/input/fields.ts';
import { read } from '@sim/input/read.ts';
import type { ModuleSlug } from '@lessons/course.ts';

import { RECORD_VERSION, type LearnerRecord } from './shape.ts';

const KIND = 'ridge-to-bed-record';
/** Bytes; ten years of evenings stay far below it. */
export const GREATEST_FILE = 8_000_000;
const LATEST_TIME = 8.64e15;

const module = oneOf(course.map((one) => one.slug) as [ModuleSlug, ...ModuleSlug[]]);
const outcome = oneOf(Object.values(outcomes).flat() as [OutcomeId, ...OutcomeId[]]);
const time = () => numberFrom(0, LATEST_TIME);
const share = () => numberFrom(0, 1);
const MANY = 100_000;

const recordSchema = z.strictObject({
  modules: listOf(z.strictObject({ slug: module, state: oneOf(['begun', 'done']), at: time() }), 0, MANY),
  predictions: listOf(
    z.strictObject({
      id: textUpTo(120),
      module,
      figure: textUpTo(80),
      of: oneOf(['share', 'choice']),
      guess: share(),
      truth: share(),
      at: time(),
    }),
    0,
    MANY,
  ),
  answers: listOf(
    z.strictObject({
      id: textUpTo(160),
      module,
      outcome,
      template: textUpTo(80),
      seed: numberFrom(0, 2 ** 53),
      slot: wholeFrom(0, 10_000),
      points: share(),
      ideas: listOf(textUpTo(80), 0, 40),
      from: oneOf(['check', 'review', 'round']),
      at: time(),
    }),
    0,
    MANY,
  ),
  cards: listOf(
    z.strictObject({
      outcome,
      due: time(),
      stability: numberFrom(0, 1e6),
      difficulty: numberFrom(0, 100),
      scheduledDays: numberFrom(0, 1e6),
      learningSteps: wholeFrom(0, 100),
      reps: wholeFrom(0, 1e6),
      lapses: wholeFrom(0, 1e6),
      state: wholeFrom(0, 3),
      lastReview: z.nullable(time()),
    }),
    0,
    1000,
  ),
});

/** A step that turns the data of one version into the next. */
export type Upgrade = (older: unknown) => unknown;

/** From version n to n + 1, at place n. The first version has nothing before it. */
export const upgrades: Record<number, Upgrade> = {};

/** Brings older data up to the present version, step by step. @returns null when a step is missing */
export function upgraded(data: unknown, from: number, to = RECORD_VERSION, steps = upgrades): unknown {
  let now = data;
  for (let version = from; version < to; version += 1) {
    const step = steps[version];
    if (!step) return null;
    now = step(now);
  }
  return now;
}

export type FileReading = { ok: true; record: LearnerRecord } | { ok: false; says: string[] };

/** The record as one file's text. */
export const writeRecordFile = (record: LearnerRecord): string =>
  JSON.stringify({ kind: KIND, version: RECORD_VERSION, record });

/** Reads such a file; every refusal is a sentence for the reader, and nothing is taken from a file that has a fault. */
export function readRecordFile(text: string): FileReading {
  if (text.length > GREATEST_FILE) return { ok: false, says: ['The file is larger than any record can be.'] };
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return { ok: false, says: ['The file is not a record of this course, or it was cut short on the way.'] };
  }
  const outer = data as { kind?: unknown; version?: unknown; record?: unknown } | null;
  if (typeof outer !== 'object' || outer?.kind !== KIND)
    return { ok: false, says: ['The file is not a record of this course.'] };
  if (typeof outer.version !== 'number' || !Number.isInteger(outer.version) || outer.version < 1)
    return { ok: false, says: ['The file does not say which version of the record it holds.'] };
  if (outer.version > RECORD_VERSION)
    return {
      ok: false,
      says: ['The file comes from a newer edition of this course. Update this page, then try again.'],
    };
  const reading = read(recordSchema, upgraded(outer.record, outer.version));
  return reading.ok
    ? { ok: true, record: reading.value as LearnerRecord }
    : { ok: false, says: reading.faults.slice(0, 5).map(faultSentence) };
}
