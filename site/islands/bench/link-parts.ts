import type { BedSetup, ReliefSetup, SurfaceReadings } from '@sim/bed/types.ts';

import { LINE_NAMES, lineOf } from './surface-lines.ts';
import type { Told } from './told.ts';

/** Pieces of the address that hold more than one value: values with `_` between, lines with `~` between. */
const ROUND = 1e4;

export const short = (value: unknown): string =>
  typeof value === 'number' ? String(Math.round(value * ROUND) / ROUND) : String(value);

/** Numbers and yes or no as they are meant; anything else stays text, and the set-up's own reader refuses it. */
export function meant(text: string): unknown {
  if (text === 'true') return true;
  if (text === 'false') return false;
  return text.trim() !== '' && Number.isFinite(Number(text)) ? Number(text) + 0 : text; // −0 is 0
}

type Given = Record<string, unknown>;

/** Values by name, in order; more than there are names stay as one text that the reader refuses. */
function named(text: string, names: readonly string[]): unknown {
  const values = text.split('_');
  if (values.length > names.length) return text;
  return Object.fromEntries(values.map((value, n) => [names[n], meant(value)]));
}

const listed = (given: object, names: readonly string[]): string =>
  names.map((name) => short((given as Given)[name])).join('_');

const RELIEF = ['shape', 'pitchMm', 'depthMm', 'directionDeg', 'raisedShare'] as const;
const PLATES = ['massKg', 'volumeMl', 'diameterMm'] as const;
const GLASS = ['massKg', 'sideMm', 'coverage'] as const;
const WEATHER = ['temperatureC', 'wind', 'sun', 'air'] as const;
const PIECES = ['along', 'across', 'jointMm'] as const;

/** Each line begins with its letter: along, across, the rising and the falling diagonal, or a row of a grid. */
const LETTERS = { along: 'a', across: 'c', rising: 'r', falling: 'f' } as const;
const GRID = 'g';

function readingsText(readings: SurfaceReadings): string {
  if (readings.gridMm) return readings.gridMm.map((row) => GRID + row.map(short).join('_')).join('~');
  return LINE_NAMES.flatMap((name) => {
    const line = lineOf(readings, name);
    return line ? [LETTERS[name] + line.map(short).join('_')] : [];
  }).join('~');
}

function readReadings(text: string): unknown {
  const given: Given = {};
  const lines = text.split('~').map((line) => [line.slice(0, 1), line.slice(1).split('_').map(meant)] as const);
  const of = (letter: string): unknown[][] => lines.filter(([begins]) => begins === letter).map(([, line]) => line);
  if (lines.some(([begins]) => begins !== GRID && !Object.values<string>(LETTERS).includes(begins))) return text;
  const [along] = of(LETTERS.along);
  const [across] = of(LETTERS.across);
  const diagonals = [...of(LETTERS.rising), ...of(LETTERS.falling)];
  const grid = of(GRID);
  if (along) given['alongMm'] = along;
  if (across) given['acrossMm'] = across;
  if (diagonals.length > 0) given['diagonalsMm'] = diagonals;
  if (grid.length > 0) given['gridMm'] = grid;
  return given;
}

/** A word of the address that holds a part of a set-up, or what was told of its mortar. */
export interface LinkPart {
  word: string;
  part: 'tile' | 'floor' | 'mortar';
  field: string;
  write: (setup: BedSetup, told: Told) => string | null;
  read: (text: string) => unknown;
}

const many = (pieces: BedSetup['tile']['pieces']): boolean => pieces.along * pieces.across > 1;
const textOf = <T extends object>(given: T | undefined, names: readonly string[]): string | null =>
  given ? listed(given, names) : null;

export const linkParts: readonly LinkPart[] = [
  {
    word: 'pieces',
    part: 'tile',
    field: 'pieces',
    write: ({ tile }) => (many(tile.pieces) ? listed(tile.pieces, PIECES) : null),
    read: (text) => named(text, PIECES),
  },
  {
    word: 'back',
    part: 'tile',
    field: 'relief',
    write: ({ tile }) => textOf<ReliefSetup>(tile.relief, RELIEF),
    read: (text) => named(text, RELIEF),
  },
  {
    word: 'read',
    part: 'tile',
    field: 'readings',
    write: ({ tile }) => (tile.readings ? readingsText(tile.readings) : null),
    read: readReadings,
  },
  {
    word: 'floorread',
    part: 'floor',
    field: 'readings',
    write: ({ floor }) => (floor.readings ? readingsText(floor.readings) : null),
    read: readReadings,
  },
  {
    word: 'patty',
    part: 'mortar',
    field: 'twoPlates',
    write: (_, told) => textOf(told.twoPlates, PLATES),
    read: (text) => named(text, PLATES),
  },
  {
    word: 'glass',
    part: 'mortar',
    field: 'glass',
    write: (_, told) => textOf(told.glass, GLASS),
    read: (text) => named(text, GLASS),
  },
  {
    word: 'weather',
    part: 'mortar',
    field: 'weather',
    write: (_, told) => textOf(told.weather, WEATHER),
    read: (text) => named(text, WEATHER),
  },
];
