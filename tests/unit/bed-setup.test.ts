import { describe, expect, it } from 'vitest';

import { readSetup } from '@sim/bed/read-setup.ts';
import { faultSentence } from '@sim/input/fault.ts';

const sentences = (input: unknown): string[] => {
  const reading = readSetup(input);
  return reading.ok ? [] : reading.faults.map(faultSentence);
};

describe('reading a set-up', () => {
  it('fills in every field that is left out and names it', () => {
    const reading = readSetup({ tile: { lengthMm: 300 }, actions: [{ do: 'press', forceN: 90 }] });
    if (!reading.ok) throw new Error('refused');
    const { setup, assumed } = reading.value;
    expect(setup.tile.lengthMm).toBe(300);
    expect(setup.actions).toEqual([{ do: 'press', forceN: 90, atX: 0, atY: 0 }]);
    expect(assumed).toMatchObject({ 'tile.widthMm': 305, 'tile.pieces.jointMm': 3, 'actions[0].atX': 0, cellMm: 1.27 });
    expect(assumed).not.toHaveProperty(['tile.lengthMm']);
    expect(assumed).not.toHaveProperty(['actions[0].forceN']);
  });

  it('assumes nothing when all is given', () => {
    const first = readSetup({});
    if (!first.ok) throw new Error('refused');
    const again = readSetup(first.value.setup);
    expect(again).toEqual({ ok: true, value: { setup: first.value.setup, assumed: {} } });
  });

  it.each([
    [{ tile: { lengthMm: -3 } }, 'tile.lengthMm: is -3; give a number from 10 to 3300 mm.'],
    [{ tile: { lengthMm: 'long' } }, 'tile.lengthMm: is the text "long"; give a number from 10 to 3300 mm.'],
    [{ tile: { lengthMm: NaN } }, 'tile.lengthMm: is not a finite number; give a number from 10 to 3300 mm.'],
    [{ tile: { lengthMm: 40_000 } }, 'tile.lengthMm: is 40000; give a number from 10 to 3300 mm.'],
    [{ tile: { lenghtMm: 300 } }, 'tile.lenghtMm: is not a field we know; leave it out or check its spelling.'],
    [
      { actions: [{ do: 'press', atX: 400 }] },
      'actions[0].atX: is 400, beside the tile; give a number from -305 to 305 mm.',
    ],
    [[], 'input: is a list of 0; give an object with the fields described.'],
  ])('refuses %j in one sentence', (input, sentence) => {
    expect(sentences(input)).toEqual([sentence]);
  });

  it('refuses more cells than it would compute', () => {
    expect(sentences({ cellMm: 0.1 })[0]).toMatch(/^cellMm: is 0.1, which cuts the tile into \d+ cells; give a larger/);
  });

  it('names every fault, not the first alone', () => {
    expect(sentences({ tile: { lengthMm: -1, widthMm: 'x' }, butterMm: 99 })).toHaveLength(3);
  });
});
