import { crc32 } from 'node:zlib';

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { MODULES } from '@quiz/modules.ts';
import { checksum } from '@quiz/records/checksum.ts';
import { readRound, roundFaults, roundSeed, seatSeed, writeRound, type ClassRound } from '@quiz/records/class-round.ts';
import { cleanName, nameWasCleaned } from '@quiz/records/clean-text.ts';

const rounds: fc.Arbitrary<ClassRound> = fc.record({
  code: fc.stringMatching(/^[A-Z0-9-]{2,12}$/),
  bank: fc.stringMatching(/^[\w-]{1,24}$/),
  modules: fc.subarray([...MODULES]),
  items: fc.integer({ min: 1, max: 40 }),
  pass: fc.integer({ min: 0, max: 100 }).map((percent) => percent / 100),
  perSeat: fc.boolean(),
  units: fc.constantFrom('imperial', 'metric'),
  due: fc.option(fc.constantFrom('2026-11-30', '2027-02-28')),
});

describe('a round for a class', () => {
  test('comes back from its line as it was', () => {
    fc.assert(
      fc.property(rounds, (round) => {
        expect(readRound(writeRound(round))).toEqual(round);
      }),
    );
  });
  test('is short enough for a square code that a phone reads across a room', () => {
    fc.assert(
      fc.property(rounds, (round) => {
        expect(writeRound(round).length).toBeLessThanOrEqual(80);
      }),
    );
  });
  test('altered, cut off or foreign lines are not read', () => {
    const line = writeRound({
      code: 'TILE-1', bank: 'b1', modules: [], items: 10, pass: 0.8, perSeat: true, units: 'metric', due: null,
    }); // prettier-ignore
    expect(readRound(line)).not.toBeNull();
    for (const bad of [
      '',
      'class1',
      line.replace('class1', 'class2'),
      line.slice(0, 12),
      `${line}x`,
      line.replace('.10.', '.99.'),
      line.replace('.80.', '.999.'),
      line.replace('TILE-1', 'tile<b>'),
    ])
      expect(readRound(bad), bad).toBeNull();
  });
  test('faults name the field', () => {
    const good = {
      code: 'A1',
      bank: 'b',
      modules: [],
      items: 5,
      pass: 0.7,
      perSeat: false,
      units: 'metric',
      due: null,
    } as const;
    expect(roundFaults(good)).toEqual([]);
    expect(roundFaults({ ...good, code: 'a b', items: 0, pass: NaN, due: '2026-13-01' })).toEqual([
      'code',
      'items',
      'pass',
      'due',
    ]);
  });
  test('gives every seat its own figures, or all the same', () => {
    const round = {
      code: 'A1',
      bank: 'b',
      modules: [],
      items: 5,
      pass: 0.7,
      perSeat: true,
      units: 'metric',
      due: null,
    } as const;
    const seeds = Array.from({ length: 40 }, (_, seat) => seatSeed(round, seat + 1));
    expect(new Set(seeds).size).toBe(40);
    const same = { ...round, perSeat: false };
    expect(seatSeed(same, 7)).toBe(roundSeed(same));
    expect(roundSeed(round)).toBe(roundSeed(same));
  });
});

describe('a checksum', () => {
  test('is the CRC-32 that the zip format uses', () => {
    // Check value of the CRC catalogue: the nine figures 123456789.
    expect(checksum('123456789')).toBe('cbf43926');
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        expect(checksum(text)).toBe(crc32(text).toString(16).padStart(8, '0'));
      }),
    );
  });
});

describe('a name', () => {
  test('loses what hides or turns text, and nothing else', () => {
    expect(cleanName('  Ada\u0000  O’Neill\u202e ')).toBe('Ada O’Neill');
    expect(cleanName('José Müller 王')).toBe('José Müller 王');
    expect(cleanName('=HYPERLINK("x")')).toBe('=HYPERLINK("x")');
    expect(cleanName('<b>Bold</b>')).toBe('<b>Bold</b>');
    expect(cleanName('x'.repeat(200))).toHaveLength(60);
    expect(nameWasCleaned('José')).toBe(false);
    expect(nameWasCleaned('Jo\u200bse')).toBe(true);
  });
  test('never holds a control character, whatever was given', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (name) => {
        expect(cleanName(name)).not.toMatch(/[\p{Cc}\p{Cs}\u202a-\u202e]/u);
        expect(cleanName(cleanName(name))).toBe(cleanName(name));
      }),
    );
  });
});
