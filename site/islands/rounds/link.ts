import type { UnitSystem } from '@sim/units/format.ts';
import { MODULES } from '@quiz/modules.ts';

import { type Mode, openSession, type Session } from './session.ts';

/** A round as the part of an address after `#`: nothing of it is sent anywhere. */
export function roundLink({ seed, items, mode, modules, units }: Session): string {
  const fields = new URLSearchParams({ seed: String(seed), items: String(items), mode, units });
  if (modules.length > 0) fields.set('modules', modules.map((module) => MODULES.indexOf(module) + 1).join('.'));
  return fields.toString();
}

/** Whether such a part says which units its round is asked in. */
export const namesUnits = (hash: string): boolean => new URLSearchParams(hash.replace(/^#/, '')).has('units');

/** Reads such a part; null when it names no round. One that names no units is asked in the reader's. */
export function readRoundLink(hash: string, reader: UnitSystem): Session | null {
  const fields = new URLSearchParams(hash.replace(/^#/, ''));
  const seed = Number(fields.get('seed'));
  const items = Number(fields.get('items'));
  const mode = fields.get('mode') as Mode | null;
  if (!fields.has('seed') || !Number.isInteger(seed) || seed < 0 || seed > 0xffffffff) return null;
  if (!Number.isInteger(items) || items < 1 || items > 60) return null;
  const modules = (fields.get('modules') ?? '').split('.').flatMap((text) => MODULES[Number(text) - 1] ?? []);
  const named = fields.get('units');
  const units = named === 'imperial' || named === 'metric' ? named : reader;
  return openSession({ seed, items, mode: mode === 'diagnosing' ? 'diagnosing' : 'mixed', modules, units });
}
