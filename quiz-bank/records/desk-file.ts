import * as z from 'zod/mini';

import type { Reading } from '../../simulations/input/fault.ts';
import { read } from '../../simulations/input/read.ts';
import { deskBookSchema, openBook, readBook, writeBook, type DeskBook } from './desk-book.ts';
import { readPlateTest, type PlateTest } from './plate-test.ts';
import { readRecords, type PullRecord } from './pull-record.ts';

/** The whole desk as one file: the book, the hands-on records, the mortar's test and the photos. */
export interface DeskFile {
  book: DeskBook;
  records: readonly PullRecord[];
  plates: PlateTest | null;
  /** A record's photo by its id: JPEG as base64. */
  photos: Readonly<Record<string, string>>;
}

/** One photo as base64: three quarters of that in bytes, and far above what the desk makes of a photo. */
export const MOST_PHOTO_CHARS = 1_000_000;
/** All photos of a file together; the newest records come first. */
export const MOST_PHOTOS_CHARS = 40_000_000;
/** What is read as a desk at all. */
export const MOST_DESK_BYTES = 64_000_000;

const schema = z.strictObject({
  ...deskBookSchema.shape,
  version: z.literal(2),
  pulls: z.unknown(),
  plates: z.unknown(),
  photos: z.record(z.string(), z.unknown()),
});

/** The photos that fit into a file, and how many don't. */
export function photosThatFit(
  records: readonly PullRecord[],
  photos: Readonly<Record<string, string>>,
): { fit: Record<string, string>; left: number } {
  const fit: Record<string, string> = {};
  let room = MOST_PHOTOS_CHARS;
  let left = 0;
  for (const { id, photo } of records) {
    const text = photo && Object.hasOwn(photos, id) ? (photos[id] ?? '') : '';
    if (text === '') continue;
    if (text.length > MOST_PHOTO_CHARS || text.length > room) left += 1;
    else {
      fit[id] = text;
      room -= text.length;
    }
  }
  return { fit, left };
}

/** The desk as the text of a file. */
export const writeDeskFile = ({ book, records, plates, photos }: DeskFile): string =>
  `${JSON.stringify({ ...writeBook(book), version: 2, pulls: records, plates, photos })}\n`;

/** A JPEG's first three bytes are `/9j/` in base64. */
const JPEG = /^\/9j\/[A-Za-z0-9+/]*={0,2}$/;
const isPhoto = (text: unknown): text is string =>
  typeof text === 'string' && text.length <= MOST_PHOTO_CHARS && JPEG.test(text);

/** The good photos of records that say they have one; what else stands there is counted. */
function photosOf(records: readonly PullRecord[], given: Readonly<Record<string, unknown>>) {
  const ids = new Set(records.flatMap(({ id, photo }) => (photo ? [id] : [])));
  const good = Object.entries(given).flatMap(([id, text]) => (ids.has(id) && isPhoto(text) ? [[id, text]] : []));
  const { fit } = photosThatFit(records, Object.fromEntries(good) as Record<string, string>);
  return { photos: fit, lost: Object.keys(given).length - Object.keys(fit).length };
}

/**
 * Reads a saved desk of this or the first version, which had no hands-on records. What can't be read of it is left out
 * and counted.
 */
export function readDeskFile(input: unknown): Reading<DeskFile & { lost: number }> {
  const first = readBook(input);
  if (first.ok) return { ok: true, value: { ...first.value, records: [], plates: null, photos: {} } };
  const reading = read(schema, input);
  if (!reading.ok) return reading;
  const { pulls, plates, photos, rounds } = reading.value;
  const { book, lost } = openBook(rounds);
  const pulled = readRecords(pulls);
  const pictures = photosOf(pulled.records, photos);
  return {
    ok: true,
    value: {
      book,
      records: pulled.records,
      plates: readPlateTest(plates),
      photos: pictures.photos,
      lost: lost + pulled.lost + pictures.lost,
    },
  };
}
