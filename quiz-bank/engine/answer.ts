import type { UnitSystem } from '../../simulations/units/format.ts';
import type { Choice, Form, Item } from './item.ts';
import { cellName } from './letters.ts';
import { type Quantity, unitOf } from './quantity.ts';
import { readNumber } from './read-number.ts';

/** An answer that could be read, in its plain form. */
export type Given =
  | { kind: 'one'; letter: string }
  | { kind: 'all'; letters: string[] }
  | { kind: 'order'; letters: string }
  | { kind: 'number'; value: number }
  | { kind: 'mark'; cell: string }
  | { kind: 'judge'; verdict: string; letter: string };

export type AnswerReading = { ok: true; given: Given } | { ok: false; blank: boolean; sentence: string };

/** What stands for a list with no box ticked: an empty answer means that nothing was answered. */
export const NONE_TICKED = '-';

const unread = (sentence: string): AnswerReading => ({ ok: false, blank: false, sentence });
const range = (choices: Choice[]): string => `${choices[0]?.letter ?? ''} to ${choices.at(-1)?.letter ?? ''}`;
const lettersIn = (text: string): string[] => [...text.toUpperCase().replaceAll(/[\s,;→>]+/g, '')];
const strange = (letters: string[], choices: Choice[]): string | undefined =>
  letters.find((letter) => !choices.some((choice) => choice.letter === letter));

function oneLetter(text: string, choices: Choice[]): { ok: true; letter: string } | { ok: false; sentence: string } {
  const letters = lettersIn(text);
  const [letter] = letters;
  if (letters.length !== 1 || !letter) return { ok: false, sentence: `one letter is wanted, ${range(choices)}` };
  if (strange(letters, choices)) return { ok: false, sentence: `"${letter}" is not among ${range(choices)}` };
  return { ok: true, letter };
}

/** Units a number may be written in, whatever the page asks in. */
const otherNames: Partial<Record<Quantity, Record<string, [UnitSystem, number]>>> = {
  length: { mm: ['metric', 1], cm: ['metric', 10], in: ['imperial', 1], '"': ['imperial', 1], ft: ['imperial', 12] },
  gap: { mm: ['metric', 1], in: ['imperial', 1], '"': ['imperial', 1] },
  share: { '%': ['metric', 1] },
  area: { 'm²': ['metric', 1], m2: ['metric', 1], 'ft²': ['imperial', 1], ft2: ['imperial', 1] },
  volume: { l: ['metric', 1], qt: ['imperial', 1] },
  mass: { kg: ['metric', 1], lb: ['imperial', 1] },
  rate: { 'ft² a bag': ['imperial', 1], 'm² a bag': ['metric', 1], 'ft²': ['imperial', 1], 'm²': ['metric', 1] },
  hours: { h: ['metric', 1], hours: ['metric', 1], min: ['metric', 1 / 60] },
  minutes: { min: ['metric', 1] },
  count: { bags: ['metric', 1], bag: ['metric', 1], tiles: ['metric', 1], tile: ['metric', 1] },
  times: { '×': ['metric', 1], x: ['metric', 1], times: ['metric', 1] },
};

function readQuantity(text: string, quantity: Quantity, units: UnitSystem): AnswerReading {
  const number = readNumber(text);
  if (!number.ok) return unread(number.sentence);
  const asked = unitOf(quantity, units);
  if (number.unit === null || number.unit === asked.name.toLowerCase())
    return { ok: true, given: { kind: 'number', value: number.value * asked.base } };
  const named = otherNames[quantity]?.[number.unit];
  if (!named) return unread(`"${number.unit}" is not a unit for this; write it in ${asked.name || 'a plain number'}`);
  const [system, many] = named;
  return { ok: true, given: { kind: 'number', value: number.value * many * unitOf(quantity, system).base } };
}

function readCell(text: string, columns: number, rows: number): AnswerReading {
  const cell = text.trim().toUpperCase();
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++)
      if (cellName(column, row) === cell) return { ok: true, given: { kind: 'mark', cell } };
  return unread(
    `"${cell.slice(0, 10)}" is no square of the picture; they run from A1 to ${cellName(columns - 1, rows - 1)}`,
  );
}

function readForm(form: Form, text: string, units: UnitSystem): AnswerReading {
  switch (form.kind) {
    case 'one': {
      const read = oneLetter(text, form.choices);
      return read.ok ? { ok: true, given: { kind: 'one', letter: read.letter } } : unread(read.sentence);
    }
    case 'all': {
      if (text.trim() === NONE_TICKED) return { ok: true, given: { kind: 'all', letters: [] } };
      const letters = lettersIn(text);
      const odd = strange(letters, form.choices);
      if (odd) return unread(`"${odd}" is not among ${range(form.choices)}`);
      return { ok: true, given: { kind: 'all', letters: [...new Set(letters)].sort() } };
    }
    case 'order': {
      const letters = lettersIn(text);
      const odd = strange(letters, form.choices);
      if (odd) return unread(`"${odd}" is not among ${range(form.choices)}`);
      if (letters.length !== form.choices.length || new Set(letters).size !== letters.length)
        return unread(`each of ${range(form.choices)} is wanted once`);
      return { ok: true, given: { kind: 'order', letters: letters.join('') } };
    }
    case 'number':
      return readQuantity(text, form.quantity, units);
    case 'mark':
      return readCell(text, form.columns, form.rows);
    case 'judge': {
      const [verdict = '', ...rest] = text.trim().toLowerCase().split(/\s+/);
      const letter = rest.join('').toUpperCase();
      if (verdict !== 'yes' && verdict !== 'no') return unread('the verdict is missing');
      if (letter === '') return unread('the deciding reason is missing');
      const read = oneLetter(letter, form.choices);
      return read.ok ? { ok: true, given: { kind: 'judge', verdict, letter: read.letter } } : unread(read.sentence);
    }
  }
}

/**
 * Reads what a learner gave. An answer that can't be read is not a wrong one: it comes back with a sentence that says
 * what would be read.
 */
export function readAnswer(item: Item, text: string): AnswerReading {
  if (text.trim() === '') return { ok: false, blank: true, sentence: 'no answer was given' };
  if (text.length > 80) return unread('the answer is longer than any answer to this');
  return readForm(item.form, text, item.units);
}
