import * as z from 'zod/mini';

import type { Reading } from '../../simulations/input/fault.ts';
import { listOf, numberFrom, oneOf, textUpTo, wholeFrom, yesOrNo } from '../../simulations/input/fields.ts';
import { read } from '../../simulations/input/read.ts';
import { judgePull } from '../../simulations/judge/judge.ts';
import type { Judgement } from '../../simulations/judge/pull-types.ts';
import { readPull } from '../../simulations/judge/read-pull.ts';
import { exposures, surfaces } from '../../simulations/estimate/job-types.ts';
import { standardSets } from '../../simulations/rules/rule.ts';
import type { UnitSystem } from '../../simulations/units/format.ts';
import { cleanName } from './clean-text.ts';
import { readOutline } from './outline.ts';
import { plateTestSchema } from './plate-test.ts';

/** Pressed only; moved across the ridges there and back; moved along them. */
export const waysOfSetting = ['pressed', 'across', 'along'] as const;

/** The grid a tile's back is counted on: fine enough for a void of a couple of inches on a two-foot tile. */
export const GRID = 12;
export const MOST_TILES = 10;
export const MOST_RECORDS = 500;

const schema = z.strictObject({
  id: textUpTo(40),
  learner: textUpTo(200),
  /** 2026-11-30 */
  day: z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/)),
  standards: oneOf(standardSets),
  exposure: oneOf(exposures),
  surface: oneOf(surfaces),
  material: oneOf(['porcelain', 'ceramic', 'stone', 'glass', 'mosaic']),
  lengthMm: numberFrom(5, 3600, 'mm'),
  widthMm: numberFrom(5, 3600, 'mm'),
  thicknessMm: numberFrom(2, 60, 'mm'),
  /** What the learner said before the pull; null when nobody asked. */
  predicted: z.nullable(numberFrom(0, 1)),
  tiles: listOf(
    z.strictObject({
      columns: wholeFrom(1, 60),
      rows: wholeFrom(1, 60),
      /** A letter a square: `#` bare, `.` mortar. */
      marks: z.string().check(z.maxLength(3600), z.regex(/^[#.]*$/)),
      backCoatOnly: yesOrNo(),
    }),
    1,
    MOST_TILES,
  ),
  photo: yesOrNo(),
  /** Which notch combed the bed; null where nobody told. */
  notch: z.nullable(textUpTo(40)),
  /** How the tile was set; null where nobody told. */
  setBy: z.nullable(oneOf(waysOfSetting)),
  buttered: yesOrNo(),
  /** The two-plate test of the mortar under it; null where none was made. */
  plates: z.nullable(plateTestSchema),
});

/** What the fields of later versions mean in a record that was kept before there were any. */
const notTold = { notch: null, setBy: null, buttered: false, plates: null };
const isPlain = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A hands-on pull test of one learner. Lengths mm. */
export type PullRecord = z.infer<typeof schema>;
export type MarkedPull = PullRecord['tiles'][number];

export const freshTile = (): MarkedPull => ({
  columns: GRID,
  rows: GRID,
  marks: '.'.repeat(GRID * GRID),
  backCoatOnly: false,
});

/** Reads kept or carried records; one that cannot be read, or stands there twice, is left out and counted. */
export function readRecords(input: unknown): { records: PullRecord[]; lost: number } {
  if (!Array.isArray(input)) return { records: [], lost: 0 };
  const readings: Reading<PullRecord>[] = input
    .slice(0, MOST_RECORDS)
    .map((one) => read(schema, isPlain(one) ? { ...notTold, ...one } : one));
  const ids = new Set<string>();
  const records = readings.flatMap((one) => {
    if (!one.ok || ids.has(one.value.id)) return [];
    ids.add(one.value.id);
    return one.value.tiles.every(({ columns, rows, marks }) => marks.length === columns * rows)
      ? [{ ...one.value, learner: cleanName(one.value.learner) }]
      : [];
  });
  return { records, lost: input.length - records.length };
}

/** Each tile of a record as counted on its outline. */
export const outlinesOf = (record: Pick<PullRecord, 'tiles' | 'lengthMm' | 'widthMm'>) =>
  record.tiles.map((tile) => ({
    ...readOutline(
      { columns: tile.columns, rows: tile.rows, bare: [...tile.marks].map((mark) => mark === '#') },
      record.lengthMm,
      record.widthMm,
    ),
    backCoatOnly: tile.backCoatOnly,
  }));

/** Mean coverage over the lifted tiles; a coat that never met the bed is no contact. */
export function measuredCoverage(record: PullRecord): number {
  const each = outlinesOf(record).map((tile) => (tile.backCoatOnly ? 0 : tile.coverage));
  return each.reduce((sum, share) => sum + share, 0) / each.length;
}

/** The verdict of the same judge that `calc judge` asks. @throws when the record holds what the judge refuses */
export function judgeRecord(record: PullRecord, units: UnitSystem): Judgement {
  const { standards, exposure, surface, material, thicknessMm } = record;
  const reading = readPull({ standards, exposure, surface, material, thicknessMm, pulls: outlinesOf(record) });
  if (!reading.ok) throw new Error(reading.faults.map(({ path, problem }) => `${path} ${problem}`).join('; '));
  return judgePull(reading.value.pull, { units }, reading.value.assumed);
}
