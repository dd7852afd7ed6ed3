import * as z from 'zod/mini';

import { course, type ModuleSlug } from '@lessons/course.ts';
import { cleanName } from '@quiz/records/clean-text.ts';
import { readText } from '@sim/input/read.ts';

import { CHECKS, WORK_KINDS, workFor, type CheckId, type WorkKind } from './work.ts';

export const MODULE_ORDER: readonly ModuleSlug[] = course.map(({ slug }) => slug);

/** Who signed a check, and on which day (2026-11-30). */
export interface Signature {
  by: string;
  on: string;
}

/** A helper's card. Days are written as 2026-11-30; an empty start means that none was set. */
export interface CrewCard {
  name: string;
  start: string;
  kinds: readonly WorkKind[];
  modules: Readonly<Partial<Record<ModuleSlug, string>>>;
  checks: Readonly<Partial<Record<CheckId, Signature>>>;
}

export interface CrewBook {
  shop: string;
  cards: readonly CrewCard[];
}

export const MOST_CARDS = 100;

export const freshCard = (start: string): CrewCard => ({ name: '', start, kinds: [], modules: {}, checks: {} });
export const freshBook = (start: string): CrewBook => ({ shop: '', cards: [freshCard(start)] });

const text = z.string().check(z.maxLength(200));
const day = z.string().check(z.regex(/^(\d{4}-\d{2}-\d{2})?$/));

const schema = z.strictObject({
  ridgeToBed: z.literal('crew'),
  version: z.literal(1),
  shop: text,
  cards: z
    .array(
      z.strictObject({
        name: text,
        start: day,
        kinds: z.array(z.enum(WORK_KINDS)).check(z.maxLength(WORK_KINDS.length)),
        modules: z.partialRecord(z.enum(MODULE_ORDER as [ModuleSlug, ...ModuleSlug[]]), day),
        checks: z.partialRecord(z.enum(CHECKS), z.strictObject({ by: text, on: day })),
      }),
    )
    .check(z.maxLength(MOST_CARDS)),
});

export const writeCrew = (book: CrewBook): string =>
  `${JSON.stringify({ ridgeToBed: 'crew', version: 1, ...book }, null, 1)}\n`;

/** Reads a kept or carried book of cards; null when it is none. */
export function readCrew(source: string): CrewBook | null {
  const kept = readText(schema, source);
  if (!kept) return null;
  return {
    shop: cleanName(kept.shop),
    cards: kept.cards.map((card) => ({
      name: cleanName(card.name),
      start: card.start,
      kinds: card.kinds,
      modules: Object.fromEntries(Object.entries(card.modules).filter(([, on]) => on !== undefined)),
      checks: Object.fromEntries(
        Object.entries(card.checks).flatMap(([id, sign]) =>
          sign ? [[id, { by: cleanName(sign.by), on: sign.on }]] : [],
        ),
      ),
    })),
  };
}

/** Puts another book's cards beside ours; a helper of the same name and start keeps both sets of signatures. */
export function mergeCrew(ours: CrewBook, theirs: CrewBook): CrewBook {
  const cards = [...ours.cards];
  for (const card of theirs.cards) {
    const at = cards.findIndex((one) => one.name === card.name && one.start === card.start);
    const own = cards[at];
    if (!own) cards.push(card);
    else
      cards[at] = {
        ...own,
        kinds: WORK_KINDS.filter((kind) => own.kinds.includes(kind) || card.kinds.includes(kind)),
        modules: { ...card.modules, ...own.modules },
        checks: { ...card.checks, ...own.checks },
      };
  }
  return { shop: ours.shop || theirs.shop, cards: cards.slice(0, MOST_CARDS) };
}

export type DueKind = 'module' | 'check' | 'again';

/** Something to do with a helper, and by when. */
export interface Due {
  kind: DueKind;
  id: ModuleSlug | CheckId;
  /** 2026-11-30 */
  by: string;
}

/** Two modules a week, a check in the week of the modules it rests on, a check again after a season (common practice). */
const DAYS_A_MODULE = 3.5;
const DAYS_TO_CHECK = 14;
const DAYS_TO_REPEAT = 90;
const DAY_MS = 86_400_000;

const after = (start: string, days: number): string =>
  new Date(Date.parse(`${start}T12:00:00Z`) + Math.round(days) * DAY_MS).toISOString().slice(0, 10);

/** What is still to do with a helper, soonest first; nothing without a day to count from. */
export function dueOf(card: CrewCard): Due[] {
  if (card.start === '' || Number.isNaN(Date.parse(card.start))) return [];
  const { modules, checks } = workFor(card.kinds, MODULE_ORDER);
  const open: Due[] = [
    ...modules
      .map((id, at): Due => ({ kind: 'module', id, by: after(card.start, (at + 1) * DAYS_A_MODULE) }))
      .filter(({ id }) => card.modules[id as ModuleSlug] === undefined),
    ...checks.flatMap((id, at): Due[] => {
      const signed = card.checks[id];
      if (!signed) return [{ kind: 'check', id, by: after(card.start, DAYS_TO_CHECK + at) }];
      return signed.on === '' ? [] : [{ kind: 'again', id, by: after(signed.on, DAYS_TO_REPEAT) }];
    }),
  ];
  return open.sort((a, b) => a.by.localeCompare(b.by));
}
