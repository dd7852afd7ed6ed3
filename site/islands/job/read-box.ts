import type { UnitSystem } from '@sim/units/format.ts';
import { commonNotches } from '@sim/trowel/common-notches.ts';
import type { Notch } from '@sim/trowel/notch.ts';
import { squareFeet } from '@sim/units/length.ts';
import { parseLength } from '@sim/units/parse-length.ts';

import type { Bare, Box } from './catalogue.ts';
import { readNumber } from './read-number.ts';

/** Why the text of a box is not understood; the sentence for each stands in the messages. */
export type Misread = 'no-number' | 'comma' | 'length' | 'area' | 'share' | 'weight' | 'temperature' | 'choice';

export type BoxValue = string | number | boolean | readonly Notch[];

/** What a box says: nothing, a value in the core's unit, or text we do not understand. */
export type BoxReading = { state: 'empty' } | { state: 'read'; value: BoxValue } | { state: 'misread'; why: Misread };

const POUND_KG = 0.45359237; // exact: international avoirdupois pound, 1959

const got = (value: BoxValue): BoxReading => ({ state: 'read', value });
const misread = (why: Misread): BoxReading => ({ state: 'misread', why });

/** Splits "50 lb" into its number and its unit word, in small letters. A 2 belongs to a unit only behind its letters: m2. */
const split = (text: string): { amount: string; unit: string } => {
  const parts = /^(.*?)\s*((?:[a-zµ°²'"′″%]+2?)?\.?)$/u.exec(text.trim().toLowerCase());
  return { amount: parts?.[1] ?? '', unit: (parts?.[2] ?? '').replace(/\.$/, '') };
};

function length(text: string, units: UnitSystem, bare: Bare): BoxReading {
  const unit = bare[units];
  // A plain number takes the box's own unit, which for long straightedges is feet or metres.
  const plain = readNumber(text);
  if (!plain.ok && plain.why === 'comma') return misread('comma');
  const millimetres = parseLength(plain.ok ? `${text.trim()} ${unit}` : text, units === 'imperial' ? 'in' : 'mm');
  return millimetres === null ? misread('length') : got(millimetres);
}

const AREA_UNITS: Record<string, (value: number) => number> = {
  'm²': (value) => value,
  m2: (value) => value,
  sqm: (value) => value,
  'ft²': squareFeet,
  ft2: squareFeet,
  sqft: squareFeet,
  sf: squareFeet,
};

/** An area (`120`, `120 sq ft`, `11 m²`) or the two sides of a room (`10 x 12`, `10 ft × 3.6 m`). */
function area(text: string, units: UnitSystem): BoxReading {
  const said = text
    .toLowerCase()
    .replace(/\bby\b/, 'x')
    .replace(/\bsq(?:uare|\.)?\s*(?:feet|foot|ft)\b/, 'sqft')
    .replace(/\bsq(?:uare|\.)?\s*(?:met(?:re|er)s?|m)\b/, 'sqm')
    .replace('^2', '2');
  const sides = said.split(/[x×]/);
  if (sides.length === 2) {
    const read = sides.map((side) => length(side, units, { imperial: 'ft', metric: 'm' }));
    const metres = read.flatMap((side) => (side.state === 'read' ? [Number(side.value) / 1000] : []));
    return metres.length === 2 ? got(metres.reduce((one, other) => one * other, 1)) : misread('area');
  }
  const { amount, unit } = split(said);
  const convert = AREA_UNITS[unit === '' ? (units === 'imperial' ? 'ft2' : 'm2') : unit];
  const value = readNumber(amount);
  if (!value.ok) return misread(value.why === 'comma' ? 'comma' : 'area');
  return convert ? got(convert(value.value)) : misread('area');
}

/** A share as a percentage (`10`, `10 %`) or a fraction (`1/3`, `0.33`). */
function share(text: string): BoxReading {
  const { amount, unit } = split(text);
  const value = readNumber(amount);
  if (!value.ok || (unit !== '' && unit !== '%')) return misread('share');
  // Nobody means a third of one per cent by 0.33.
  const asFraction = amount.includes('/') || (unit === '' && value.value > 0 && value.value < 1);
  return got(asFraction ? value.value : value.value / 100);
}

function weight(text: string, units: UnitSystem): BoxReading {
  const { amount, unit } = split(text);
  const value = readNumber(amount);
  const word = unit === '' ? (units === 'imperial' ? 'lb' : 'kg') : unit;
  if (!value.ok || !['lb', 'lbs', 'pound', 'pounds', 'kg'].includes(word)) return misread('weight');
  return got(word === 'kg' ? value.value : value.value * POUND_KG);
}

function temperature(text: string, units: UnitSystem): BoxReading {
  const { amount, unit } = split(text);
  const value = readNumber(amount);
  const word = unit.replace('°', '') || (units === 'imperial' ? 'f' : 'c');
  if (!value.ok || !['f', 'c'].includes(word)) return misread('temperature');
  return got(word === 'c' ? value.value : (value.value - 32) / 1.8);
}

/** Trowels by their stable names, a comma between two. */
function trowels(text: string): BoxReading {
  const chosen = text.split(',').map((id) => commonNotches.find((notch) => notch.id === id));
  const known = chosen.flatMap((notch) => (notch ? [notch] : []));
  if (known.length < chosen.length) return misread('choice');
  return got(known.map(({ shape, widthMm, depthMm, toothMm }) => ({ shape, widthMm, depthMm, toothMm })));
}

/**
 * Reads one box.
 * @param text as typed
 * @param units the system for text without a unit
 * @returns the value in the core's unit (mm, m², kg, °C, share 0…1), or why it is not understood
 */
export function readBox(box: Box, text: string, units: UnitSystem): BoxReading {
  if (text.trim() === '') return { state: 'empty' };
  switch (box.kind) {
    case 'text':
      return got(text.trim());
    case 'choice':
      return box.choices?.includes(text) ? got(text) : misread('choice');
    case 'flag':
      return text === 'yes' || text === 'no' ? got(text === 'yes') : misread('choice');
    case 'length':
      return length(text, units, box.bare ?? { imperial: 'in', metric: 'mm' });
    case 'area':
      return area(text, units);
    case 'share':
      return share(text);
    case 'weight':
      return weight(text, units);
    case 'temperature':
      return temperature(text, units);
    case 'trowels':
      return trowels(text);
    case 'number': {
      const value = readNumber(text);
      return value.ok ? got(value.value) : misread(value.why);
    }
  }
}
