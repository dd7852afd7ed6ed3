import { isDeepStrictEqual } from 'node:util';

import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { afterAll, describe, expect, test, vi } from 'vitest';

import { fakeStorage, keptReaders } from './kept-readers.ts';
import { strangeText, type Draw } from './mutate.ts';
import { pageReaders } from './page-readers.ts';
import type { Reader } from './reader.ts';
import { poorRefusal, unsound } from './sound.ts';
import { verbReaders } from './verbs.ts';

/**
 * Every reader of ours meets texts that are altered, cut, swollen, hostile or noise. It refuses in sentences or takes a
 * sound value; it never throws, and what it took it takes again.
 * `FUZZ_TEXTS` texts a reader from the seed `FUZZ_SEED`; `npm run fuzz` takes many more from a new seed and prints it.
 */
const TEXTS = Number(process.env['FUZZ_TEXTS'] ?? 10_000);
const SEED = Number(process.env['FUZZ_SEED'] ?? 20_261_125);

vi.stubGlobal('localStorage', fakeStorage);
afterAll(() => void vi.unstubAllGlobals());

const drawFrom = (seed: number): Draw => {
  const chance = xoroshiro128plus(seed);
  return (most) => uniformInt(chance, 0, Math.max(0, most - 1));
};

/** How many values may yet be used, and how many of those that take long. */
interface Uses {
  left: number;
  dear: number;
}
const MOST_DEAR = 3;

/** @returns what is wrong with how the text was met; null when nothing is */
function fault(reader: Reader, text: string, uses: Uses): string | null {
  const outcome = reader.read(text);
  if (outcome.state === 'refused') return outcome.faults ? poorRefusal(outcome.faults) : null;
  const found = unsound(outcome.value);
  if (found) return `took a number that is none, at ${found}`;
  if (reader.write) {
    const again = reader.read(reader.write(outcome.value as never));
    if (again.state !== 'taken') return 'does not take back what it took';
    if (!isDeepStrictEqual(again.value, outcome.value)) return 'takes back something else than it took';
  }
  const isDear = reader.isDear?.(outcome.value as never) === true;
  if (reader.use && uses.left > 0 && (!isDear || uses.dear > 0)) {
    uses.left -= 1;
    if (isDear) uses.dear -= 1;
    const made = unsound(reader.use(outcome.value as never));
    if (made) return `made a number that is none, at ${made}`;
  }
  return null;
}

describe.each([...verbReaders, ...pageReaders, ...keptReaders])('$name', (reader) => {
  test('takes its good texts', () => {
    for (const good of reader.good) {
      expect(reader.read(good).state).toBe('taken');
      expect(fault(reader, good, { left: 1, dear: 1 })).toBeNull();
    }
  });

  test(`meets ${TEXTS} strange texts (seed ${SEED})`, { timeout: 600_000 }, () => {
    const draw = drawFrom(SEED);
    const share = TEXTS / 10_000;
    const uses = { left: (reader.mostUses ?? Infinity) * share, dear: MOST_DEAR * share };
    for (let at = 0; at < TEXTS; at += 1) {
      const text = strangeText(reader.good[draw(reader.good.length)] as string, reader.json, draw);
      let wrong: string | null;
      try {
        wrong = fault(reader, text, uses);
      } catch (problem) {
        wrong = `threw ${String(problem instanceof Error ? problem.stack : problem).slice(0, 600)}`;
      }
      if (wrong) throw new Error(`text ${at}: ${wrong}\n${text.slice(0, 1500)}`);
    }
  });
});
