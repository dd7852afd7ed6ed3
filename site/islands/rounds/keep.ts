import { bank } from '@quiz/bank.ts';
import { MODULES } from '@quiz/modules.ts';

import type { Session } from './session.ts';

const ROUND = 'rtb.round';
const MISSED = 'rtb.round.missed';
const MOST_MISSED = 60;

/** What was found of an earlier round. */
export type Kept = { kind: 'none' } | { kind: 'round'; session: Session } | { kind: 'other-bank' };

const isSession = (value: unknown): value is Session => {
  const one = value as Partial<Session> | null;
  return (
    typeof one === 'object' &&
    one !== null &&
    typeof one.seed === 'number' &&
    typeof one.items === 'number' &&
    ['mixed', 'diagnosing', 'review'].includes(one.mode ?? '') &&
    [one.modules, one.answers, one.templates].every(
      (list) => Array.isArray(list) && list.every((text) => typeof text === 'string'),
    ) &&
    (one.modules ?? []).every((module) => MODULES.includes(module)) &&
    (one.templates ?? []).every((id) => bank.templates.some((template) => template.id === id))
  );
};

function readJson(key: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(key) ?? 'null') as unknown;
  } catch {
    return null;
  }
}

/** @returns false when the browser kept nothing (storage closed or full); the round goes on without it. */
function writeJson(key: string, value: unknown): boolean {
  try {
    localStorage.setItem(key, JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}

export function keptRound(): Kept {
  const value = readJson(ROUND);
  const version = (value as { bank?: unknown } | null)?.bank;
  if (typeof version === 'string' && version !== bank.version) return { kind: 'other-bank' };
  return isSession(value) ? { kind: 'round', session: value } : { kind: 'none' };
}

export const keepRound = (session: Session): boolean => writeJson(ROUND, session);

export function dropRound(): void {
  try {
    localStorage.removeItem(ROUND);
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
