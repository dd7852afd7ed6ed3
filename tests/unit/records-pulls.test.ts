import { describe, expect, test } from 'vitest';

import { readOutline } from '@quiz/records/outline.ts';
import { predictionsOf } from '@quiz/records/pull-forecast.ts';
import { freshTile, judgeRecord, measuredCoverage, readRecords, type PullRecord } from '@quiz/records/pull-record.ts';

/** An outline as a picture: `#` bare, `.` mortar. */
const drawn = (...lines: string[]) => ({
  columns: lines[0]?.length ?? 0,
  rows: lines.length,
  bare: [...lines.join('')].map((mark) => mark === '#'),
});

const record = (marks: string[], more: Partial<PullRecord> = {}): PullRecord => ({
  id: 'a', learner: 'Ada', day: '2026-11-30', standards: 'north-america', exposure: 'interior-dry', surface: 'floor',
  material: 'porcelain', lengthMm: 300, widthMm: 300, thicknessMm: 9, predicted: null, photo: false, notch: null,
  setBy: null, buttered: false, plates: null,
  tiles: marks.map((one) => ({ columns: 4, rows: 4, marks: one, backCoatOnly: false })),
  ...more,
}); // prettier-ignore
const full = '.'.repeat(16);

describe('a marked outline', () => {
  test('counts its squares and finds each void with its size and place', () => {
    const { coverage, voids } = readOutline(drawn('......', '.##...', '.#....', '....#.'), 600, 400);
    expect(coverage).toBeCloseTo(20 / 24, 12);
    expect(voids).toEqual([
      { areaMm2: 30_000, toEdgeMm: 100, toCornerMm: Math.hypot(100, 100) },
      { areaMm2: 10_000, toEdgeMm: 0, toCornerMm: 100 },
    ]);
  });
  test('squares that touch by a corner only are two voids; a bare corner lies in the corner', () => {
    const { voids } = readOutline(drawn('#...', '.#..', '....', '....'), 400, 400);
    expect(voids).toHaveLength(2);
    expect(voids[0]).toMatchObject({ toEdgeMm: 0, toCornerMm: 0 });
  });
  test('none bare is all covered, all bare is none', () => {
    expect(readOutline(drawn('..', '..'), 100, 100)).toEqual({ coverage: 1, voids: [] });
    expect(readOutline(drawn('##', '##'), 100, 100)).toMatchObject({ coverage: 0, voids: [{ areaMm2: 10_000 }] });
  });
});

describe('a hands-on record', () => {
  test('is judged as `calc judge` judges: three full tiles pass, three poor ones fail, two are not enough', () => {
    expect(judgeRecord(record([full, full, full]), 'metric').verdict).toBe('pass');
    const poor = `.....##..##.####`;
    expect(judgeRecord(record([poor, poor, poor]), 'metric').verdict).toBe('fail');
    expect(judgeRecord(record([full, full]), 'metric').verdict).toBe('not-enough');
  });
  test('a back coat that never met the bed is no contact', () => {
    const tiles = [0, 1, 2].map(() => ({ columns: 4, rows: 4, marks: full, backCoatOnly: true }));
    expect(measuredCoverage(record([], { tiles }))).toBe(0);
    expect(judgeRecord(record([], { tiles }), 'metric').verdict).toBe('fail');
  });
  test('predictions are held against what was pulled', () => {
    const half = `${'#'.repeat(8)}${'.'.repeat(8)}`;
    const { count, bias, spread } = predictionsOf([
      record([half], { predicted: 0.7 }),
      record([half], { predicted: 0.5 }),
      record([half]),
    ]);
    expect(count).toBe(2);
    expect(bias).toBeCloseTo(0.1, 12);
    expect(spread).toBeCloseTo(Math.SQRT2 / 10, 12);
    expect(predictionsOf([])).toEqual({ count: 0, bias: null, spread: null });
  });
  test('damaged records are left out and counted', () => {
    const good = record([full]);
    const { records, lost } = readRecords([
      good,
      { ...good, tiles: [{ ...freshTile(), marks: '.' }] },
      { ...good, day: 'x' },
      null,
      'x',
      good,
    ]);
    expect(records).toEqual([good]);
    expect(lost).toBe(5);
    expect(readRecords('nonsense').records).toEqual([]);
  });
  test('kept before anybody was asked for notch, way and mortar, is read as not told', () => {
    const later = ['notch', 'setBy', 'buttered', 'plates'];
    const old = Object.entries(record([full])).filter(([name]) => !later.includes(name));
    expect(readRecords([Object.fromEntries(old)])).toEqual({ records: [record([full])], lost: 0 });
  });
});
