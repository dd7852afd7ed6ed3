import { readSetup } from '@sim/bed/read-setup.ts';
import { runBed } from '@sim/bed/run.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import { describe, expect, test } from 'vitest';

const tile = { lengthMm: 100, widthMm: 100 };

function read(actions: object[], comb: object = {}): BedSetup {
  const reading = readSetup({ tile, comb, actions });
  if (!reading.ok) throw new Error(reading.faults.map(({ problem }) => problem).join());
  return reading.value.setup;
}

const press = { do: 'press', forceN: 60 };

describe('what opens a list of actions', () => {
  test('flatten is the same as saying it of the comb', () => {
    expect(read([{ do: 'flatten' }, { do: 'lay' }, press])).toEqual(read([press], { flattened: true }));
  });

  test('lay changes nothing: a tile lies by its own weight in any case', () => {
    const { lengthMm, widthMm, thicknessMm, densityKgM3 } = read([]).tile;
    const laid = runBed(read([{ do: 'lay' }])).result;
    expect(laid).toEqual(runBed(read([])).result);
    expect(laid.history).toEqual([]);
    // Weight by hand: 100 × 100 × 9 mm at 2300 kg/m³.
    expect((lengthMm * widthMm * thicknessMm * densityKgM3 * 9.80665) / 1e9).toBeCloseTo(2.03, 2);
    expect(laid.loadN).toBeCloseTo(2.03, 2);
  });

  test('what was assumed is told by its place in the list that was given', () => {
    const reading = readSetup({ tile, actions: [{ do: 'flatten' }, press] });
    expect(reading.ok && Object.keys(reading.value.assumed)).toContain('actions[1].atX');
    expect(reading.ok && Object.keys(reading.value.assumed)).not.toContain('comb.flattened');
  });
});
