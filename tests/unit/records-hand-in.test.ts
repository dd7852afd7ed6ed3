import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { pack } from '@sim/input/packed.ts';
import { checksum } from '@quiz/records/checksum.ts';
import { writeRound, type ClassRound } from '@quiz/records/class-round.ts';
import { collect, MOST_FILES, type Dropped } from '@quiz/records/collect.ts';
import { readHandInLine, readHandInText, writeHandIn, writeHandInFile, type HandIn } from '@quiz/records/hand-in.ts';

const round: ClassRound = {
  code: 'TILE-1', bank: 'b1', modules: [], items: 3, pass: 0.7, perSeat: true, units: 'imperial', due: '2026-11-30',
}; // prettier-ignore
const handIn = (seat: number, name: string, answers = ['A', '12 1/2', '']): HandIn => ({
  round,
  seat,
  name,
  answers,
  at: 29_000_000,
});
const dropped = (name: string, text: string | null, bytes = text?.length ?? 10): Dropped => ({
  name,
  bytes,
  text: () => Promise.resolve(text),
});
const whys = async (files: Dropped[], before: HandIn[] = []) =>
  (await collect(files, round, before)).refused.map(({ why }) => why);

describe('a hand-in', () => {
  test('comes back from its line and from its file', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 40 }),
        fc.array(fc.string({ maxLength: 80 }), { minLength: 3, maxLength: 3 }),
        (seat, answers) => {
          const given = handIn(seat, 'Ada Lindqvist', answers);
          expect(readHandInLine(writeHandIn(given))).toEqual({ ok: true, handIn: given, nameCleaned: false });
          expect(readHandInText(writeHandInFile(given))).toEqual([{ ok: true, handIn: given, nameCleaned: false }]);
        },
      ),
    );
  });
  test('cut off anywhere is refused, never misread', () => {
    const line = writeHandIn(handIn(4, 'Bo'));
    for (let end = 0; end < line.length; end++)
      expect(readHandInLine(line.slice(0, end)).ok, `cut at ${end}`).toBe(false);
  });
  test('with any one character changed is refused', () => {
    const line = writeHandIn(handIn(4, 'Bo'));
    for (let at = 0; at < line.length; at++) {
      const changed = line.slice(0, at) + (line[at] === 'a' ? 'b' : 'a') + line.slice(at + 1);
      expect(readHandInLine(changed).ok, `changed at ${at}`).toBe(false);
    }
  });
  test('says how it is bad', () => {
    const line = writeHandIn(handIn(4, 'Bo'));
    const why = (text: string) => readHandInText(text).map((reading) => (reading.ok ? 'taken' : reading.why));
    expect(why('')).toEqual(['empty']);
    expect(why(line.slice(0, -3))).toEqual(['truncated']);
    expect(why(line.replace('handin1', 'handin2'))).toEqual(['other-version']);
    expect(why('MZ\u0090 what is this')).not.toContain('taken');
    expect(why('{"ridgeToBed":"hand-in","line":"')).toEqual(['truncated']);
    expect(why('{"some":"json"}')).toEqual(['wrong-type']);
    expect(why(`${line}\n${writeHandIn(handIn(5, 'Cy'))}`)).toEqual(['taken', 'taken']);
    // What is written round one is left out, and a text without any is refused once.
    expect(why(`I am handing in “${line}”, or rather ${writeHandIn(handIn(5, 'Cy'))}. Bo`)).toEqual(['taken', 'taken']);
    expect(why('I am handing this in.')).toEqual(['unreadable']);
  });
  test('made by hand with a good checksum must still hold to its form', () => {
    const forge = (value: unknown) => {
      const body = pack(JSON.stringify(value));
      return readHandInLine(`handin1.${body}.${checksum(body)}`).ok;
    };
    const good = { r: writeRound(round), s: 4, n: 'Bo', a: ['A', 'B', 'C'], t: 1 };
    expect(forge(good)).toBe(true);
    for (const bad of [
      { ...good, mark: 100 },
      { ...good, a: ['A'] },
      { ...good, a: ['A', 'B', 'C'.repeat(100)] },
      { ...good, s: 99 },
      { ...good, s: '4' },
      { ...good, r: 'class1.nonsense' },
      [],
      null,
      'text',
    ])
      expect(forge(bad)).toBe(false);
  });
});

describe('taking many hand-ins', () => {
  test('each bad one is named with its reason and the good ones still count', async () => {
    const good = writeHandIn(handIn(1, 'Ada'));
    const { taken, refused } = await collect(
      [
        dropped('ada.json', writeHandInFile(handIn(1, 'Ada'))),
        dropped('again.txt', good),
        dropped('photo.png', null),
        dropped('big.txt', 'x', 1_000_001),
        dropped('cut.txt', good.slice(0, 40)),
        dropped('other bank.txt', writeHandIn({ ...handIn(2, 'Bo'), round: { ...round, bank: 'b0' } })),
        dropped('other round.txt', writeHandIn({ ...handIn(2, 'Bo'), round: { ...round, code: 'TILE-2' } })),
        dropped('bo.txt', writeHandIn(handIn(2, 'Bo'))),
      ],
      round,
      [],
    );
    expect(taken.map(({ handIn: one }) => one.name)).toEqual(['Ada', 'Bo']);
    expect(refused).toEqual([
      { from: 'again.txt', why: 'duplicate' },
      { from: 'photo.png', why: 'wrong-type' },
      { from: 'big.txt', why: 'too-large' },
      { from: 'cut.txt', why: 'truncated' },
      { from: 'other bank.txt', why: 'other-bank' },
      { from: 'other round.txt', why: 'other-round' },
    ]);
  });
  test('a moved due day is the same round; a moved pass mark is not', async () => {
    expect(await whys([dropped('a', writeHandIn({ ...handIn(1, 'Ada'), round: { ...round, due: null } }))])).toEqual(
      [],
    );
    expect(await whys([dropped('a', writeHandIn({ ...handIn(1, 'Ada'), round: { ...round, pass: 0.1 } }))])).toEqual([
      'other-round',
    ]);
  });
  test('what the desk holds already is a duplicate, another try at the seat is not', async () => {
    expect(await whys([dropped('a', writeHandIn(handIn(1, 'Ada')))], [handIn(1, 'Ada')])).toEqual(['duplicate']);
    expect(await whys([dropped('a', writeHandIn(handIn(1, 'Ada', ['B', '', ''])))], [handIn(1, 'Ada')])).toEqual([]);
  });
  test('the five hundred and first file is refused', async () => {
    const files = Array.from({ length: MOST_FILES + 2 }, (_, at) => dropped(`${at}`, writeHandIn(handIn(1, `n${at}`))));
    const { taken, refused } = await collect(files, round, []);
    expect(taken).toHaveLength(MOST_FILES);
    expect(refused.map(({ why }) => why)).toEqual(['too-many', 'too-many']);
  });
  test('names that hide or turn are cleaned and said to be', async () => {
    const body = pack(JSON.stringify({ r: writeRound(round), s: 1, n: 'A\u202eda\u0007', a: ['', '', ''], t: 1 }));
    const { taken } = await collect([dropped('\u202egnp.exe', `handin1.${body}.${checksum(body)}`)], round, []);
    expect(taken[0]).toMatchObject({ from: 'gnp.exe', nameCleaned: true, handIn: { name: 'A da' } });
  });
  test('any text at all gives an answer and never an error', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'binary', maxLength: 200 }), async (text) => {
        const { taken } = await collect([dropped('x', text)], round, []);
        expect(taken).toEqual([]);
      }),
    );
  });
});
