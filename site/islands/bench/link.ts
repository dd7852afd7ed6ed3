import { readSetup } from '@sim/bed/read-setup.ts';
import type { BedAction, BedSetup } from '@sim/bed/types.ts';
import type { Reading } from '@sim/input/fault.ts';
import { mortarWords } from '@sim/rules/mortar-words.ts';

import { linkParts, meant, short } from './link-parts.ts';
import { startSetup, withCells } from './start-setup.ts';
import { stillTold, usualWeather, type Told } from './told.ts';

/**
 * A set-up in the part of the address after `#`: `bed=1` (the version), then only what differs from the bench's start,
 * each field by its path in the set-up. A bed of one's own is a few dozen characters, and a person can read it.
 */
const VERSION = '1';

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
  ['floor3', 'floor', 'twistMm'],
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
  ['skin', 'mortar', 'skinMin'],
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

/** A bed and what was told of its mortar in place of the model's numbers. */
export interface BedTold {
  setup: BedSetup;
  told: Told;
}

/** The set-up as the text after `#`; what was told of the mortar stands there as it was told, while it holds. */
export function linkOf(setup: BedSetup, given: Told = {}): string {
  const usual = startSetup();
  const told = stillTold(setup, given);
  const parts = [`bed=${VERSION}`];
  for (const [word, part, field] of fields) {
    if ((field === 'yieldPa' && (told.twoPlates ?? told.glass)) || (field === 'skinMin' && told.weather)) continue;
    const value = at(setup, part, field);
    if (value !== undefined && short(value) !== short(at(usual, part, field))) parts.push(`${word}=${short(value)}`);
  }
  for (const { word, write } of linkParts) {
    const text = write(setup, told);
    if (text !== null) parts.push(`${word}=${text}`);
  }
  const { path, pattern } = setup.comb;
  if (path && pattern === 'drawn') parts.push(`stroke=${strokeText(path)}`);
  if (setup.butterMm !== usual.butterMm) parts.push(`butter=${short(setup.butterMm)}`);
  const work = setup.actions.map(actionText).join('~');
  if (work !== usual.actions.map(actionText).join('~')) parts.push(`do=${work || 'lay'}`);
  return parts.join('&');
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

/** Every word an address may hold, for the sentence that refuses another. */
const knownWords = [...fields.map(([word]) => word), ...linkParts.map(({ word }) => word), 'butter', 'stroke', 'do'];

const refused = (path: string, problem: string, accepted: string): Reading<never> => ({
  ok: false,
  faults: [{ path: path.slice(0, 40), problem, accepted }],
});

/**
 * Reads a bed out of the text after `#`, with what it tells of the mortar in words or by test.
 * @returns the complete set-up, or a fault for each thing that cannot be meant; nothing is guessed
 */
export function bedOf(hash: string): Reading<BedTold> {
  const words = new URLSearchParams(hash.replace(/^#/, ''));
  const version = words.get('bed');
  if (version !== VERSION)
    return refused('bed', `is version "${(version ?? '').slice(0, 40)}"`, `this bench reads version ${VERSION}`);
  words.delete('bed');
  const usual = startSetup();
  const given: Record<string, unknown> = { actions: usual.actions, cellMm: usual.cellMm };
  const put = (part: string, field: string, value: unknown): void => {
    given[part] = { ...(given[part] as object | undefined), [field]: value };
  };
  const told = new Set([...words.keys()]);
  for (const [word, part, field] of fields) {
    // A test stands in the place of the stiffness it measures.
    const tested = field === 'yieldPa' && (told.has('patty') || told.has('glass')) && !told.has(word);
    if (!tested) put(part, field, at(usual, part, field));
  }
  for (const [word, text] of words) {
    const known = fields.find(([name]) => name === word);
    const part = linkParts.find((one) => one.word === word);
    if (known) put(known[1], known[2], meant(text));
    else if (part) put(part.part, part.field, part.read(text));
    else if (word === 'butter') given['butterMm'] = meant(text);
    else if (word === 'stroke') put('comb', 'path', readStrokeText(text));
    else if (word === 'do') given['actions'] = text === 'lay' ? [] : text.split('~').map(readAction);
    else return refused(word, 'is not a word of this address', knownWords.join(', '));
  }
  const reading = readSetup({ ...given, cellMm: cellToRead(given) }, mortarWords());
  if (!reading.ok) return reading;
  const { twoPlates, glass, weather } = given['mortar'] as Told;
  return {
    ok: true,
    value: {
      setup: withCells(reading.value.setup),
      told: {
        ...(twoPlates ? { twoPlates } : {}),
        ...(glass ? { glass } : {}),
        ...(weather ? { weather: { ...usualWeather(), ...weather } } : {}),
      },
    },
  };
}

/** The same, the set-up alone. */
export function setupOf(hash: string): Reading<BedSetup> {
  const reading = bedOf(hash);
  return reading.ok ? { ok: true, value: reading.value.setup } : reading;
}
