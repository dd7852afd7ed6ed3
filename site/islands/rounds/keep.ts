import * as z from 'zod/mini';

import { bank } from '@quiz/bank.ts';
import { MODULES, type ModuleId } from '@quiz/modules.ts';
import { listOf, oneOf, textUpTo, wholeFrom } from '@sim/input/fields.ts';
import { read } from '@sim/input/read.ts';
import { onOtherTab } from '@site/storage/other-tabs.ts';
import { shelfName } from '@site/storage/shelf.ts';

import type { Session } from './session.ts';

const ROUND = 'rtb.round';
const MISSED = 'rtb.round.missed';
const MOST_MISSED = 60;
/** No answer is longer. */
const MOST_LETTERS = 200;

/** What was found of an earlier round. */
export type Kept = { kind: 'none' } | { kind: 'round'; session: Session } | { kind: 'other-bank' };

/** A round as this page keeps it; anything else on the shelf was altered or cut short, and is not opened. */
const schema = z.strictObject({
  bank: textUpTo(24),
  seed: wholeFrom(0, 0xffffffff),
  mode: oneOf(['mixed', 'diagnosing', 'review']),
  modules: listOf(oneOf(MODULES as unknown as [ModuleId, ...ModuleId[]]), 0, MODULES.length),
  items: wholeFrom(1, MOST_MISSED),
  units: oneOf(['imperial', 'metric']),
  templates: listOf(textUpTo(80), 0, MOST_MISSED),
  answers: listOf(textUpTo(MOST_LETTERS), 0, MOST_MISSED),
});

function sessionIn(value: unknown): Session | null {
  const reading = read(schema, value);
  if (!reading.ok) return null;
  const known = reading.value.templates.every((id) => bank.templates.some((template) => template.id === id));
  return known ? reading.value : null;
}

function readJson(key: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(shelfName(key)) ?? 'null') as unknown;
  } catch {
    return null;
  }
}

/** @returns false when the browser kept nothing (storage closed or full); the round goes on without it. */
function writeJson(key: string, value: unknown): boolean {
  try {
    localStorage.setItem(shelfName(key), JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}

export function keptRound(): Kept {
  const value = readJson(ROUND);
  const version = (value as { bank?: unknown } | null)?.bank;
  if (typeof version === 'string' && version !== bank.version) return { kind: 'other-bank' };
  const session = sessionIn(value);
  return session ? { kind: 'round', session } : { kind: 'none' };
}

const nameOf = ({ bank: of, seed, mode, modules, items, units, templates }: Session): string =>
  JSON.stringify([of, seed, mode, modules, items, units, templates]);

/**
 * Calls back when another tab of this browser went on with a round, or put one on the shelf or took it off.
 * @param open the round that is open here, if one is
 * @param further hears the same round with more answers than stand here
 * @returns the function that stops it
 */
export const onOthersRound = (
  open: () => Session | null,
  further: (session: Session) => void,
  other: () => void,
): (() => void) =>
  onOtherTab(shelfName(ROUND), () => {
    const here = open();
    const there = keptRound();
    if (!here) other();
    else if (
      there.kind === 'round' &&
      nameOf(there.session) === nameOf(here) &&
      there.session.answers.length > here.answers.length
    )
      further(there.session);
  });

export const keepRound = (session: Session): boolean => writeJson(ROUND, session);

export function dropRound(): void {
  try {
    localStorage.removeItem(shelfName(ROUND));
  } catch {
    // Nothing was kept, so nothing is left.
  }
}

/** Templates last answered wrong, the latest first. */
export function missedTemplates(): string[] {
  const value = readJson(MISSED);
  return Array.isArray(value)
    ? value.filter((id): id is string => bank.templates.some((template) => template.id === id))
    : [];
}

/** Puts a template on the list of what was missed, or takes it off when it went right. */
export function noteMissed(template: string, missed: boolean): void {
  const others = missedTemplates().filter((id) => id !== template);
  writeJson(MISSED, missed ? [template, ...others].slice(0, MOST_MISSED) : others);
}
