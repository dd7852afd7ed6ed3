import type { Fault, Reading } from '../input/fault.ts';
import { read } from '../input/read.ts';
import { openingsOf } from './before-laying.ts';
import { clashes } from './clashes.ts';
import { defaultActions, defaultRelief, defaultSetup } from './defaults.ts';
import { type MortarRules, readMortar } from './read-mortar.ts';
import { setupSchema } from './setup-schema.ts';
import type { BedSetup } from './types.ts';
import { fillIn } from '../input/fill-in.ts';

export interface SetupReading {
  setup: BedSetup;
  /** Every value that was not given, by its path. */
  assumed: Record<string, unknown>;
}

const flattenedAndNot: Fault = {
  path: 'comb.flattened',
  problem: 'is false beside a flatten among the actions',
  accepted: 'leave out one of the two',
};

/** A fault's path counted over the whole list that was given. */
const shifted = (path: string, openings: number): string =>
  path.replace(/^actions\[(\d+)\]/, (_, n: string) => `actions[${Number(n) + openings}]`);

/**
 * Reads a set-up; every field may be left out.
 * @param rules the trade's figures behind words for mortar and weather; without them those words are refused
 * @returns the complete set-up with what was assumed, or a fault for each field that is wrong, unknown or impossible
 */
export function readSetup(input: unknown, rules?: MortarRules): Reading<SetupReading> {
  const reading = read(setupSchema, input);
  if (!reading.ok) return reading;
  const assumed: Record<string, unknown> = {};
  const given = reading.value;
  const usual = defaultSetup();
  const mortar = readMortar(given.mortar ?? {}, fillIn(given.trowel ?? {}, usual.trowel, 'trowel', {}), rules);
  if (!mortar.ok) return mortar;
  const setup = fillIn({ ...given, mortar: mortar.value.mortar }, usual, '', assumed);
  Object.assign(assumed, mortar.value.assumed);
  if (given.tile?.relief) setup.tile.relief = fillIn(given.tile.relief, defaultRelief(), 'tile.relief', assumed);
  const { flattened, openings, rest, faults: misplaced } = openingsOf(given.actions ?? []);
  setup.actions = rest.map((action, n) =>
    fillIn(action, defaultActions[action.do], `actions[${n + openings}]`, assumed),
  );
  if (flattened) {
    setup.comb.flattened = true;
    delete assumed['comb.flattened'];
  }
  const faults = [
    ...misplaced,
    ...(flattened && given.comb?.flattened === false ? [flattenedAndNot] : []),
    ...clashes(setup).map((fault) => ({ ...fault, path: shifted(fault.path, openings) })),
  ];
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: { setup, assumed } };
}
