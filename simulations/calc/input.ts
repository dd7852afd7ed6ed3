import { createReadStream } from 'node:fs';
import type { Readable } from 'node:stream';

import type { Reading } from '../input/fault.ts';

/** No set-up, job or hand-in comes near this; more is a mistake or mischief and is not read on. */
const MOST_BYTES = 2_000_000;

const refuse = (problem: string, accepted: string): Reading<never> => ({
  ok: false,
  faults: [{ path: '', problem, accepted }],
});

async function readText(stream: Readable): Promise<string | null> {
  const chunks: Buffer[] = [];
  let bytes = 0;
  for await (const chunk of stream as AsyncIterable<Buffer>) {
    bytes += chunk.length;
    if (bytes > MOST_BYTES) return null;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks).toString('utf8');
}

/** Reads one JSON value from a file, or from standard input for `-` or no name. */
export async function readInput(file: string): Promise<Reading<unknown>> {
  let text: string | null;
  try {
    text = await readText(file === '' || file === '-' ? process.stdin : createReadStream(file));
  } catch (problem) {
    return refuse(
      `${file} cannot be read (${(problem as NodeJS.ErrnoException).code ?? 'unknown reason'})`,
      'name a JSON file, or - for standard input',
    );
  }
  return text === null ? refuse('is larger than 2 MB', 'give at most 2 MB of JSON') : parseInput(text);
}

/** One JSON value out of a text; a refusal where it holds none. */
export function parseInput(text: string): Reading<unknown> {
  if (text.trim() === '') return refuse('is empty', 'give one JSON object');
  try {
    return { ok: true, value: JSON.parse(text.replace(/^\uFEFF/, '')) as unknown };
  } catch (problem) {
    return refuse(
      `is not JSON (${(problem as Error).message.replaceAll(/\s+/g, ' ').slice(0, 80)})`,
      'give one JSON object',
    );
  }
}
