import * as z from 'zod/mini';

import { withoutHidden } from '@sim/input/hidden.ts';
import { readText } from '@sim/input/read.ts';

import { areaBoxIds, jobBoxIds, type AreaBoxId, type JobBoxId } from './catalogue.ts';
import { blankArea, blankJob, MOST_AREAS, type Draft } from './draft.ts';

/** No box holds more; the list of trowels is the longest. */
export const MOST_LETTERS = 400;

const text = z.string().check(z.maxLength(MOST_LETTERS));
const texts = (ids: readonly [string, ...string[]]) => z.partialRecord(z.enum(ids), text);

/** A draft as it is kept and sent: only the boxes that hold something. */
const schema = z.strictObject({
  version: z.literal(1),
  units: z.enum(['imperial', 'metric']),
  title: text,
  job: texts(jobBoxIds as [JobBoxId, ...JobBoxId[]]),
  areas: z.array(texts(areaBoxIds as [AreaBoxId, ...AreaBoxId[]])).check(z.minLength(1), z.maxLength(MOST_AREAS)),
});

const clean = <Id extends string>(boxes: Partial<Record<Id, string>>): Partial<Record<Id, string>> =>
  Object.fromEntries(
    Object.entries<string | undefined>(boxes).map(([id, value]) => [id, withoutHidden(value ?? '')]),
  ) as Partial<Record<Id, string>>;

const filled = <Id extends string>(boxes: Readonly<Record<Id, string>>): Partial<Record<Id, string>> =>
  Object.fromEntries(Object.entries<string>(boxes).filter(([, value]) => value !== '')) as Partial<Record<Id, string>>;

/** The draft as text, for keeping and for a link. */
export const writeDraft = (draft: Draft): string =>
  JSON.stringify({ ...draft, job: filled(draft.job), areas: draft.areas.map((area) => filled(area.boxes)) });

/** Reads a draft from kept or sent text; null when it is not one, whatever it is instead. */
export function readDraft(source: string): Draft | null {
  const kept = readText(schema, source);
  if (!kept) return null;
  const { units, title, job, areas } = kept;
  return {
    version: 1,
    units,
    title: withoutHidden(title),
    job: { ...blankJob(), ...clean(job) },
    areas: areas.map((boxes, at) => ({ id: at + 1, boxes: { ...blankArea(), ...clean(boxes) } })),
  };
}
