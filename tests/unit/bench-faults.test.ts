import { defaultSetup } from '@sim/bed/defaults.ts';
import { readSetup } from '@sim/bed/read-setup.ts';
import type { Fault } from '@sim/input/fault.ts';
import { faultsSay, lineFaultsSay, notLengthSays } from '@site/islands/bench/controls/say-faults.ts';
import { withCells } from '@site/islands/bench/start-setup.ts';
import { describe, expect, test } from 'vitest';

/** What the reader of set-ups finds wrong with a tile so long, its cells reckoned anew as the bench does. */
function faultsOf(lengthMm: number): Fault[] {
  const setup = defaultSetup();
  const reading = readSetup(withCells({ ...setup, tile: { ...setup.tile, lengthMm } }));
  return reading.ok ? [] : reading.faults;
}

describe('what cannot be is told in one sentence', () => {
  test('by the name of what was typed, not by what follows from it', () => {
    expect(faultsOf(-127).length).toBeGreaterThan(1);
    expect(faultsSay('Length', faultsOf(-127))).toBe('Length is −127: give a number from 10 to 3300 mm.');
    expect(faultsSay('Length', [])).toBe('');
  });

  test('in inches where inches were typed, and what is offered is accepted', () => {
    const said = faultsSay('Length', faultsOf(-127), ' -5 ');
    // 10 mm are 0.39 in and 3300 mm are 129.92 in.
    expect(said).toBe('Length is -5: give a number from 0.4 to 129.9 in.');
    for (const inches of [0.4, 129.9]) expect(faultsOf(inches * 25.4)).toEqual([]);
  });

  test('what is no length is quoted by its beginning, and nothing in it hides the rest', () => {
    expect(notLengthSays('Width', ' ', '318')).toBe('Width is empty: write it like 318.');
    expect(notLengthSays('Width', 'wide\u202e', '318')).toBe(
      'Width cannot be read, for “wide\uFFFD” is not a length: write it like 318.',
    );
    expect(notLengthSays('Width', 'x'.repeat(400), '318')).toContain(`“${'x'.repeat(20)}…”`);
  });

  test('a line of readings by the number of the one that is wrong, or by how many there are', () => {
    const says = (pieces: string[], mm: number[], units: 'metric' | 'imperial'): string => {
      const setup = defaultSetup();
      const reading = readSetup({ ...setup, tile: { ...setup.tile, readings: { diagonalsMm: [mm, [0, 0]] } } });
      return lineFaultsSay('Diagonal', reading.ok ? [] : reading.faults, pieces, units);
    };
    expect(says(['0', '1', '0'], [0, 1, 0], 'metric')).toBe('');
    expect(says(['0', '99', '0'], [0, 99, 0], 'metric')).toBe(
      'Diagonal, reading 2, is 99: give a number from −25 to 25 mm.',
    );
    // 25 mm are 0.98 in.
    expect(says(['0', '0', '5'], [0, 0, 127], 'imperial')).toBe(
      'Diagonal, reading 3, is 5: give a number from −0.9 to 0.9 in.',
    );
    expect(says(['1'], [1], 'metric')).toBe('Diagonal has 1 reading: give a list of 2 to 41.');
  });
});
