import { describe, expect, it } from 'vitest';

import { defaultSetup } from '@sim/bed/defaults.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import { waitsForRest } from '@site/islands/bench/waits-for-rest.ts';

const before = defaultSetup();
const changed: [string, BedSetup][] = [
  ['the trowel', { ...before, trowel: { ...before.trowel, angleDeg: 30 } }],
  ['the way it is drawn', { ...before, comb: { ...before.comb, pattern: 'swirl' } }],
  ['the tile’s size', { ...before, tile: { ...before.tile, lengthMm: 500 } }],
  ['its pieces', { ...before, tile: { ...before.tile, pieces: { along: 2, across: 2, jointMm: 3 } } }],
];
const kept: [string, BedSetup][] = [
  ['the mortar', { ...before, mortar: { ...before.mortar, yieldPa: 900 } }],
  ['the bow', { ...before, tile: { ...before.tile, bowLengthMm: 1 } }],
  ['what is done', { ...before, actions: [] }],
  ['the coat on the back', { ...before, butterMm: 2 }],
  ['the cells of a glance', { ...before, cellMm: 4 }],
];

describe('what comes of a step waits until the hand rests', () => {
  it.each(changed)('where %s changes the floor, when it would be seen late', (_, asked) => {
    expect(waitsForRest(100, asked, before)).toBe(false);
    expect(waitsForRest(200, asked, before)).toBe(true);
  });
  it.each(kept)('where %s leaves the floor as it was, only when it takes long', (_, asked) => {
    expect(waitsForRest(200, asked, before)).toBe(false);
    expect(waitsForRest(400, asked, before)).toBe(true);
  });
  it('and never before anything is known of how long it takes', () => {
    for (const [, asked] of [...changed, ...kept]) expect(waitsForRest(0, asked, before)).toBe(false);
    expect(waitsForRest(200, before, null)).toBe(true);
  });
});
