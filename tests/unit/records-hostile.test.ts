/** Every kind of bad hand-in by its name: what it is called, that the good ones beside it count, that names do no harm. */
import { describe, expect, test } from 'vitest';

import { pack } from '@sim/input/packed.ts';
import { checksum } from '@quiz/records/checksum.ts';
import { writeRound, type ClassRound } from '@quiz/records/class-round.ts';
import { collect, MOST_FILE_BYTES, MOST_FILES, MOST_HAND_INS, type Dropped } from '@quiz/records/collect.ts';
import { readBook, writeBook } from '@quiz/records/desk-book.ts';
import { readHandInLine, writeHandIn, writeHandInFile, type HandIn, type Refusal } from '@quiz/records/hand-in.ts';
import { safeCsv } from '@site/islands/desk/marks-csv.ts';

const round: ClassRound = {
  code: 'TILE-1', bank: 'b2', modules: [], items: 2, pass: 0.7, perSeat: true, units: 'metric', due: null,
}; // prettier-ignore
const handIn = (name: string, more: Partial<HandIn> = {}): HandIn => ({
  round,
  seat: 1,
  name,
  answers: ['A', '3'],
  at: 29_000_000,
  ...more,
});
const file = (text: string | null, name = 'x.txt', bytes = text?.length ?? 10): Dropped => ({
  name,
  bytes,
  text: () => Promise.resolve(text),
});
/** A line with a good checksum round whatever is given. */
const forged = (value: unknown): string => {
  const body = pack(JSON.stringify(value));
  return `handin1.${body}.${checksum(body)}`;
};
const named = (name: string): string => forged({ r: writeRound(round), s: 1, n: name, a: ['A', '3'], t: 1 });
const good = writeHandIn(handIn('Ada'));
const edited = good.replace(/\.(....)/, (_, four: string) => `.${[...four].toReversed().join('')}`);

const kinds: [kind: string, file: Dropped, why: Refusal][] = [
  ['of another version of the bank', file(writeHandIn(handIn('Bo', { round: { ...round, bank: 'b1' } }))), 'other-bank'],
  ['of another round', file(writeHandIn(handIn('Bo', { round: { ...round, code: 'TILE-2' } }))), 'other-round'],
  ['of another edition of the site', file(good.replace('handin1', 'handin7')), 'other-version'],
  ['edited', file(edited), 'altered'],
  ['edited in its file', file(writeHandInFile(handIn('Ada')).replace(good, edited)), 'altered'],
  ['truncated', file(good.slice(0, -5)), 'truncated'],
  ['truncated file', file(writeHandInFile(handIn('Ada')).slice(0, 60)), 'truncated'],
  ['duplicated', file(good, 'again.txt'), 'duplicate'],
  ['over a megabyte', file('x', 'big.txt', MOST_FILE_BYTES + 1), 'too-large'],
  ['empty', file(''), 'empty'],
  ['a picture', file(null, 'photo.png'), 'wrong-type'],
  ['another JSON file', file('{"answers":["A"]}', 'a.json'), 'wrong-type'],
  ['a page', file('<html><script>alert(1)</script></html>', 'a.html'), 'unreadable'],
  ['forged with a mark of its own', file(forged({ r: writeRound(round), s: 1, n: 'Bo', a: ['A', '3'], t: 1, mark: 1 })), 'unreadable'],
  ['forged with too few answers', file(forged({ r: writeRound(round), s: 1, n: 'Bo', a: ['A'], t: 1 })), 'unreadable'],
  ['swelling when unpacked', file(forged({ r: ' '.repeat(5_000_000) })), 'unreadable'],
]; // prettier-ignore

describe('a hand-in that is', () => {
  test.each(kinds)('%s is refused by that name, and the good one beside it counts', async (_, bad, why) => {
    const { taken, refused } = await collect([file(good, 'ada.txt'), bad], round, []);
    expect(taken.map(({ handIn: one }) => one.name)).toEqual(['Ada']);
    expect(refused).toEqual([{ from: bad.name, why }]);
  });

  test('the five hundred and first, as a file or as a line of one file, is named and not taken', async () => {
    const lines = Array.from({ length: MOST_FILES + 5 }, (_, at) => writeHandIn(handIn(`n${at}`)));
    const files = await collect(lines.map((line) => file(line)), round, []); // prettier-ignore
    expect([files.taken.length, files.refused.length]).toEqual([MOST_FILES, 5]);
    const one = await collect([file(lines.join('\n'))], round, []);
    expect(one.taken).toHaveLength(MOST_FILES);
    expect(one.refused).toEqual([{ from: 'x.txt', why: 'too-many' }]);
  });

  test('more than the round holds is named, so that the desk can still be read again', async () => {
    const before = Array.from({ length: MOST_HAND_INS - 1 }, (_, at) => handIn(`n${at}`));
    const { taken, refused } = await collect([file(writeHandIn(handIn('Bo'))), file(writeHandIn(handIn('Cy')))], round, before); // prettier-ignore
    expect(taken).toHaveLength(1);
    expect(refused.map(({ why }) => why)).toEqual(['full']);
    const all = [...before, ...taken.map((one) => one.handIn)];
    const book = { version: 1 as const, rounds: [{ round, title: '', seats: [''], handIns: all, lines: all.map(writeHandIn) }] }; // prettier-ignore
    expect(readBook(writeBook(book))).toEqual({ ok: true, value: { book, lost: 0 } });
  });

  test('as long as can be read at all does not keep the desk from being read again', () => {
    const hard = (at: number): string => String.fromCharCode(0x4e00 + ((at * 7919) % 20_000));
    const answers = Array.from({ length: 40 }, (_, item) =>
      Array.from({ length: 80 }, (__, at) => hard(item * 80 + at)).join(''),
    );
    for (const length of [40, 60, 70, 80]) {
      const wide = { ...round, items: 40 };
      const one = handIn('Bo', { round: wide, answers: answers.map((text) => text.slice(0, length)) });
      const line = writeHandIn(one);
      if (!readHandInLine(line).ok) continue; // too long to be unpacked: refused before it gets here
      const book = { version: 1 as const, rounds: [{ round: wide, title: '', seats: [''], handIns: [one], lines: [line] }] }; // prettier-ignore
      expect(readBook(writeBook(book)), `${line.length} characters`).toMatchObject({ ok: true, value: { lost: 0 } });
    }
  });
});

describe('a hostile name', () => {
  test.each([
    ['control characters', 'A\u0000d\u0007a\u001b[31m', 'A d a [31m'],
    ['line breaks', 'Ada\r\nBo\u2028Cy', 'Ada Bo Cy'],
    ['a turned direction', 'Ada\u202egnp.exe', 'Ada gnp.exe'],
    ['isolates', '\u2066Ada\u2069', 'Ada'],
    ['zero-width marks', 'A\u200bd\u200da\ufeff', 'A d a'],
    ['half a pair', 'Ada\ud800', 'Ada'],
    ['a thousand letters', 'x'.repeat(390), 'x'.repeat(60)],
    ['nothing but hidden signs', '\u202e\u200b', ''],
  ])('with %s is cleaned and said to be', async (_, name, cleaned) => {
    const { taken } = await collect([file(named(name))], round, []);
    expect(taken[0]).toMatchObject({ nameCleaned: true, handIn: { name: cleaned } });
  });

  test.each(['<img src=x onerror=alert(1)>', '{{constructor}}', "Robert'); --", '=cmd()', '__proto__', 'عمر'])(
    '%s is a name like another: kept as it is, shown as text',
    async (name) => {
      const { taken } = await collect([file(named(name))], round, []);
      expect(taken[0]).toMatchObject({ nameCleaned: false, handIn: { name } });
    },
  );

  test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '=HYPERLINK("http://x","y")'])(
    'that would be a formula, %j, is no formula in the CSV',
    async (name) => {
      const text = await safeCsv([{ Name: name, Mark: 3 }]);
      const cell = text.replace('\uFEFF', '').split('\r\n').slice(1).join('\r\n');
      expect(cell).toMatch(/^"?'/);
    },
  );

  test('stays one cell of the CSV, whatever commas, quotes and lines are in it', async () => {
    const Papa = (await import('papaparse')).default;
    const rows = [{ Name: 'a,b"c\nd;e', Mark: 7.5 }];
    expect(Papa.parse((await safeCsv(rows)).replace('\uFEFF', ''), { header: true, dynamicTyping: true }).data).toEqual(
      rows,
    );
  });
});
