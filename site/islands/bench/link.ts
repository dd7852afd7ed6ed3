import { readSetup } from '@sim/bed/read-setup.ts';
import type { BedAction, BedSetup } from '@sim/bed/types.ts';
import type { Reading } from '@sim/input/fault.ts';

import { startSetup, withCells } from './start-setup.ts';

/**
 * A set-up in the part of the address after `#`: `bed=1` (the version), then only what differs from the bench's start,
 * each field by its path in the set-up. A bed of one's own is a few dozen characters, and a person can read it.
 */
const VERSION = '1';
const ROUND = 1e4;

/** Paths are shortened in the address; each short word stands for one field. */
const fields = [
  ['long', 'tile', 'lengthMm'],
  ['wide', 'tile', 'widthMm'],
  ['thick', 'tile', 'thicknessMm'],
  ['dense', 'tile', 'densityKgM3'],
  ['bow', 'tile', 'bowLengthMm'],
  ['cup', 'tile', 'bowWidthMm'],
  ['twist', 'tile', 'twistMm'],
  ['relief', 'tile', 'reliefMm'],
  ['floor', 'floor', 'bowLengthMm'],
  ['floor2', 'floor', 'bowWidthMm'],
  ['notch', 'trowel', 'shape'],
  ['nw', 'trowel', 'widthMm'],
  ['nd', 'trowel', 'depthMm'],
  ['nt', 'trowel', 'toothMm'],
  ['angle', 'trowel', 'angleDeg'],
  ['worn', 'trowel', 'wearMm'],
  ['yaw', 'trowel', 'yawDeg'],
  ['comb', 'comb', 'pattern'],
  ['dir', 'comb', 'directionDeg'],
  ['key', 'comb', 'keyCoatMm'],
  ['flat', 'comb', 'flattened'],
  ['bare', 'comb', 'edgeBareMm'],
  ['seed', 'comb', 'seed'],
  ['yield', 'mortar', 'yieldPa'],
  ['thickmix', 'mortar', 'viscosityPaS'],
  ['age', 'mortar', 'ageMin'],
] as const;

/** Order of an action's numbers in the address, after its letter. */
const acts: Record<BedAction['do'], { letter: string; fields: readonly string[] }> = {
  press: { letter: 'p', fields: ['forceN', 'atX', 'atY'] },
  slide: { letter: 's', fields: ['forceN', 'strokeMm', 'strokes', 'directionDeg', 'speedMmS'] },
  twist: { letter: 'w', fields: ['forceN', 'angleDeg', 'strokes', 'speedMmS'] },
  tap: { letter: 't', fields: ['energyJ', 'blows', 'atX', 'atY'] },
  vibrate: { letter: 'v', fields: ['forceN', 'amplitudeMm', 'frequencyHz', 'seconds'] },
  lift: { letter: 'l', fields: [] },
};

const short = (value: unknown): string =>
  typeof value === 'number' ? String(Math.round(value * ROUND) / ROUND) : String(value);

const at = (setup: object, part: string, field: string): unknown =>
  (setup as Record<string, Record<string, unknown>>)[part]?.[field];

function actionText(action: BedAction): string {
  const { letter, fields: names } = acts[action.do];
  const values = action as unknown as Record<string, number>;
  return letter + names.map((name) => short(values[name])).join('_');
}

/** A stroke's first place, then each further from the one before, whole mm. */
const strokeText = (path: readonly (readonly [number, number])[]): string =>
  path
    .flatMap(([x, y], n) => {
      const [fromX, fromY] = path[n - 1] ?? [0, 0];
      return [Math.round(x) - Math.round(fromX), Math.round(y) - Math.round(fromY)];
    })
    .join('_');

function readStrokeText(text: string): unknown[] {
  const path: [unknown, unknown][] = [];
  const steps = text.split('_').map(meant);
  let at: [number, number] = [0, 0];
  for (let n = 0; n < steps.length; n += 2) {
    const [x, y] = [steps[n], steps[n + 1]];
    // What is no number is left for the set-up's reader to refuse by name.
    if (typeof x !== 'number' || typeof y !== 'number') return [...path, [x, y]];
    at = [at[0] + x, at[1] + y];
    path.push([at[0], at[1]]);
  }
  return path;
}

/** The set-up as the text after `#`. */
export function linkOf(setup: BedSetup): string {
  const usual = startSetup();
  const parts = [`bed=${VERSION}`];
  for (const [word, part, field] of fields) {
    const value = at(setup, part, field);
    if (value !== undefined && short(value) !== short(at(usual, part, field))) parts.push(`${word}=${short(value)}`);
  }
  const { along, across, jointMm } = setup.tile.pieces;
  if (along * across > 1) parts.push(`pieces=${along}_${across}_${short(jointMm)}`);
  const { path, pattern } = setup.comb;
  if (path && pattern === 'drawn') parts.push(`stroke=${strokeText(path)}`);
  if (setup.butterMm !== usual.butterMm) parts.push(`butter=${short(setup.butterMm)}`);
  const work = setup.actions.map(actionText).join('~');
  if (work !== usual.actions.map(actionText).join('~')) parts.push(`do=${work || 'lay'}`);
  return parts.join('&');
}

/** Numbers and yes or no as they are meant; anything else stays text, and the set-up's own reader refuses it. */
function meant(text: string): unknown {
  if (text === 'true') return true;
  if (text === 'false') return false;
  return text.trim() !== '' && Number.isFinite(Number(text)) ? Number(text) : text;
}

function readAction(text: string): Record<string, unknown> {
  const kind = (Object.keys(acts) as BedAction['do'][]).find((name) => acts[name].letter === text[0]);
  if (!kind) return { do: text };
  const values = text.slice(1).split('_');
  if (values.length > acts[kind].fields.length) return { do: text };
  return {
    do: kind,
    ...Object.fromEntries(acts[kind].fields.flatMap((name, n) => (values[n] ? [[name, meant(values[n])]] : []))),
  };
}

/** Whether an address carries a set-up at all. */
export const isBedLink = (hash: string): boolean => /^#?bed=/.test(hash);

/** A cell that fits what is asked for, where that can be told yet; else the usual one, and the reader names the fault. */
function cellToRead(given: Record<string, unknown>): number {
  const usual = startSetup();
  const tile = { ...usual.tile, ...(given['tile'] as Partial<BedSetup['tile']> | undefined) };
  const trowel = { ...usual.trowel, ...(given['trowel'] as Partial<BedSetup['trowel']> | undefined) };
  const { cellMm } = withCells({ ...usual, tile, trowel });
  return Number.isFinite(cellMm) && cellMm > 0 ? cellMm : usual.cellMm;
}

/**
 * Reads a set-up out of the text after `#`.
 * @returns the complete set-up, or a fault for each thing that cannot be meant; nothing is guessed
 */
export function setupOf(hash: string): Reading<BedSetup> {
  const words = new URLSearchParams(hash.replace(/^#/, ''));
  const version = words.get('bed');
  if (version !== VERSION)
    return {
      ok: false,
      faults: [
        {
          path: 'bed',
          problem: `is version "${(version ?? '').slice(0, 40)}"`,
          accepted: `this bench reads version ${VERSION}`,
        },
      ],
    };
  words.delete('bed');
  const usual = startSetup();
  const given: Record<string, unknown> = { actions: usual.actions, cellMm: usual.cellMm };
  const put = (part: string, field: string, value: unknown): void => {
    given[part] = { ...(given[part] as object | undefined), [field]: value };
  };
  for (const [, part, field] of fields) put(part, field, at(usual, part, field));
  for (const [word, text] of words) {
    const known = fields.find(([name]) => name === word);
    if (known) put(known[1], known[2], meant(text));
    else if (word === 'butter') given['butterMm'] = meant(text);
    else if (word === 'stroke') put('comb', 'path', readStrokeText(text));
    else if (word === 'pieces') {
      const [along, across, jointMm] = text.split('_').map(meant);
      put('tile', 'pieces', { along, across, jointMm });
    } else if (word === 'do') given['actions'] = text === 'lay' ? [] : text.split('~').map(readAction);
    else
      return {
        ok: false,
        faults: [
          {
            path: word.slice(0, 40),
            problem: 'is not a word of this address',
            accepted: fields.map(([name]) => name).join(', '),
          },
        ],
      };
  }
  const reading = readSetup({ ...given, cellMm: cellToRead(given) });
  if (reading.ok) return { ok: true, value: withCells(reading.value.setup) };
  return reading;
}
