import { photosThatFit, readDeskFile, writeDeskFile } from '@quiz/records/desk-file.ts';

import type { Desk, DeskNotice } from './desk.svelte.ts';
import { photoFromText, photoText } from './pulls/photo.ts';
import type { PullBook } from './pulls/pull-book.svelte.ts';

/** The desk with its hands-on records and photos as the text of a file; `left` photos were too many for one file. */
export async function deskAsFile(desk: Desk, pulls: PullBook): Promise<{ text: string; left: number }> {
  const photos: Record<string, string> = {};
  for (const { id, photo } of pulls.records) {
    const blob = photo ? await pulls.photo(id) : null;
    if (blob) photos[id] = await photoText(blob);
  }
  const { fit, left } = photosThatFit(pulls.records, photos);
  const text = writeDeskFile({ book: desk.book, records: pulls.records, plates: pulls.plates, photos: fit });
  return { text, left };
}

/** Brings in a saved desk; what this desk has already stays as it is. @returns what to say of it */
export async function bringDesk(text: string | null, desk: Desk, pulls: PullBook): Promise<DeskNotice> {
  let value: unknown = null;
  try {
    value = JSON.parse(text ?? '');
  } catch {
    // not JSON: read as nothing below, and said so
  }
  const reading = readDeskFile(value);
  if (!reading.ok) return 'badFile';
  const { book, records, plates, photos, lost } = reading.value;
  const roundsLeft = await desk.join(book);
  const kept = desk.notice === 'kept';
  const recordsLeft = await pulls.join(records, plates, (id) => photoFromText(photos[id]));
  if (!kept || !pulls.lasts) return 'notKept';
  return lost + roundsLeft + recordsLeft > 0 ? 'someLost' : 'kept';
}
