import { MOST_FILE_BYTES, type Dropped } from '@quiz/records/collect.ts';

/** A file's text, read only when its size is fit, and only as UTF-8. */
export async function textOf(file: File, mostBytes: number): Promise<string | null> {
  if (file.size > mostBytes) return null;
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
  } catch {
    return null; // not text, or a folder that cannot be read
  }
}

/** A file as the intake takes it. */
export const droppedFile = (file: File): Dropped => ({
  name: file.name,
  bytes: file.size,
  text: () => textOf(file, MOST_FILE_BYTES),
});

/** Pasted or scanned text, under a name to call it by. */
export const droppedText = (name: string, text: string): Dropped => ({
  name,
  bytes: new TextEncoder().encode(text).length,
  text: () => Promise.resolve(text),
});

/** Pasted text as one hand-in a line, so that each is named by its own line. */
export const droppedLines = (name: string, text: string): Dropped[] =>
  text
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map((line, at) => droppedText(`${name} ${at + 1}`, line));
