import { describe, expect, test } from 'vitest';

import type { ClassRound } from '@quiz/records/class-round.ts';
import { writeBook, type DeskBook } from '@quiz/records/desk-book.ts';
import {
  MOST_PHOTO_CHARS,
  MOST_PHOTOS_CHARS,
  photosThatFit,
  readDeskFile,
  writeDeskFile,
  type DeskFile,
} from '@quiz/records/desk-file.ts';
import { writeHandIn, type HandIn } from '@quiz/records/hand-in.ts';
import { freshTile, type PullRecord } from '@quiz/records/pull-record.ts';

const round: ClassRound = {
  code: 'TILE-1', bank: 'b1', modules: [], items: 2, pass: 0.8, perSeat: true, units: 'metric', due: null,
}; // prettier-ignore
const handIn: HandIn = { round, seat: 1, name: 'Ada', answers: ['A', 'B'], at: 1 };
const book: DeskBook = {
  version: 1,
  rounds: [{ round, title: 'Monday', seats: ['Ada'], handIns: [handIn], lines: [writeHandIn(handIn)] }],
};
const record = (id: string, photo = false): PullRecord => ({
  id, learner: 'Ada', day: '2026-11-30', standards: 'iso-en', exposure: 'interior-dry', surface: 'floor',
  material: 'porcelain', lengthMm: 300, widthMm: 300, thicknessMm: 9, predicted: 0.8, photo, tiles: [freshTile()],
  notch: '1-4-3-8-in-square', setBy: 'across', buttered: true, plates: { volumeMl: 50, massKg: 2, diameterMm: 96 },
}); // prettier-ignore
/** The beginning of a JPEG, of any length in base64. */
const picture = (length = 8): string => `/9j/${'A'.repeat(length - 4)}`;
const desk: DeskFile = {
  book,
  records: [record('a', true), record('b')],
  plates: { volumeMl: 50, massKg: 2, diameterMm: 96 },
  photos: { a: picture() },
};
const again = (file: DeskFile) => readDeskFile(JSON.parse(writeDeskFile(file)));
const changed = (more: object) => readDeskFile({ ...(JSON.parse(writeDeskFile(desk)) as object), ...more });

describe("the desk's file", () => {
  test('comes back with rounds, hand-ins, hands-on records, the mortar and photos', () => {
    expect(again(desk)).toEqual({ ok: true, value: { ...desk, lost: 0 } });
  });

  test('of the first version is read; it had no records', () => {
    const reading = readDeskFile(JSON.parse(JSON.stringify(writeBook(book))));
    expect(reading).toEqual({ ok: true, value: { book, records: [], plates: null, photos: {}, lost: 0 } });
  });

  test.each([null, 3, 'x', [], {}, { ridgeToBed: 'desk' }, { ridgeToBed: 'crew', version: 2 }])(
    'what is no desk is refused: %j',
    (input) => expect(readDeskFile(input).ok).toBe(false),
  );

  test('a newer version and an unknown field are refused, not half read', () => {
    expect(changed({ version: 3 }).ok).toBe(false);
    expect(changed({ extra: 1 }).ok).toBe(false);
  });

  test.each([
    ['a page that calls itself a photo', { a: Buffer.from('<script>alert(1)</script>').toString('base64') }],
    ['no base64', { a: '/9j/ not base64!' }],
    ['an address', { a: 'data:image/jpeg;base64,/9j/AAAA' }],
    ['no text', { a: 7 }],
    ['one over its size', { a: picture(MOST_PHOTO_CHARS + 4) }],
    ['one of no record', { zz: picture() }],
    ['one of a record without a photo', { b: picture() }],
  ])('a bad photo is left out and counted, the rest stays: %s', (_, photos) => {
    const reading = changed({ photos });
    expect(reading).toMatchObject({ ok: true, value: { photos: {}, records: desk.records, lost: 1 } });
  });

  test('bad records and a bad test of the mortar are left out, the rest stays', () => {
    const reading = changed({
      pulls: [record('b'), { id: 'x' }, null, record('b')],
      plates: { massKg: 'heavy' },
      photos: {},
    });
    expect(reading).toMatchObject({ ok: true, value: { records: [record('b')], plates: null, lost: 3, book } });
    expect(changed({ pulls: 'none', photos: {} })).toMatchObject({ ok: true, value: { records: [] } });
  });

  test('keeps the photos of the newest records where not all fit', () => {
    const each = MOST_PHOTO_CHARS;
    const many = Array.from({ length: MOST_PHOTOS_CHARS / each + 2 }, (_, at) => record(`r${at}`, true));
    const big = picture(each);
    const { fit, left } = photosThatFit(many, Object.fromEntries(many.map(({ id }) => [id, big])));
    expect(Object.keys(fit)).toHaveLength(MOST_PHOTOS_CHARS / each);
    expect(Object.keys(fit)[0]).toBe('r0');
    expect(left).toBe(2);
  });
});
