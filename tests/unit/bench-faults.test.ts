import { defaultSetup } from '@sim/bed/defaults.ts';
import { readSetup } from '@sim/bed/read-setup.ts';
import type { Fault } from '@sim/input/fault.ts';
import { faultsSay } from '@site/islands/bench/controls/say-faults.ts';
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
    expect(faultsSay('Length', faultsOf(-127))).toBe('Length is -127: give a number from 10 to 3300 mm.');
    expect(faultsSay('Length', [])).toBe('');
  });

  test('in inches where inches were typed, and what is offered is accepted', () => {
    const said = faultsSay('Length', faultsOf(-127), ' -5 ');
    // 10 mm are 0.39 in and 3300 mm are 129.92 in.
    expect(said).toBe('Length is -5: give a number from 0.4 to 129.9 in.');
    for (const inches of [0.4, 129.9]) expect(faultsOf(inches * 25.4)).toEqual([]);
  });
});
