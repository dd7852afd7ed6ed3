/** A lifted tile: nothing is lost, fresh mortar parts in its middle, a skinned bed stays down. */
import { defaultSetup } from '@sim/bed/defaults.ts';
import { combBed } from '@sim/bed/fill.ts';
import { COMES_UP, liftTile } from '@sim/bed/lift.ts';
import { runBed } from '@sim/bed/run.ts';
import type { BedAction, BedSetup } from '@sim/bed/types.ts';
import { describe, expect, it } from 'vitest';

import { flatBed } from './bed-benches.ts';

const lift: BedAction = { do: 'lift' };
function setup(over: (setup: BedSetup) => void = () => undefined, actions: BedAction[] = []): BedSetup {
  const base = defaultSetup();
  Object.assign(base.tile, { lengthMm: 200, widthMm: 150 });
  base.trowel = { ...base.trowel, widthMm: 6.35, depthMm: 6.35, toothMm: 6.35 };
  over(base);
  base.actions = [{ do: 'press', forceN: 150, atX: 0, atY: 0 }, ...actions, lift];
  return base;
}
const slide: BedAction = { do: 'slide', forceN: 100, strokeMm: 5, strokes: 2, directionDeg: 0, speedMmS: 20 };

function liftedOf(told: BedSetup) {
  const run = runBed(told);
  if (!run.result.lifted) throw new Error('not lifted');
  return { ...run, lifted: run.result.lifted };
}

describe('what stays where', () => {
  // Conservation: what was combed under the tile and buttered on it is on the tile, on the floor, or was squeezed out.
  it.each([
    ['plain', () => undefined],
    ['buttered', (s: BedSetup) => void (s.butterMm = 1.5)],
    ['hollow back, bare', (s: BedSetup) => void (s.tile.reliefMm = 0.8)],
    [
      'sheet of six',
      (s: BedSetup) => {
        s.tile.pieces = { along: 3, across: 2, jointMm: 3 };
      },
    ],
  ])('%s: no mortar is lost', (_name, over) => {
    const told = setup(over, [slide]);
    const { lifted, result } = liftedOf(told);
    const grid = combBed(told);
    let combed = 0;
    let back = 0;
    for (let row = grid.rim; row < grid.rim + grid.tileRows; row += 1)
      for (let column = grid.rim; column < grid.rim + grid.tileColumns; column += 1)
        combed += grid.mortar[row * grid.columns + column]!;
    const area = grid.cellMm * grid.cellMm;
    const { along, across, jointMm } = told.tile.pieces;
    back = (200 - (along - 1) * jointMm) * (150 - (across - 1) * jointMm);
    const all = combed * area + told.butterMm * back;
    // In a sheet part of what was squeezed out stands in its own joints and is counted on the floor.
    const found = lifted.onTileMm3 + lifted.onFloorMm3 + (along > 1 ? 0 : result.squeezedMm3);
    expect(Math.abs(found / all - 1)).toBeLessThan(along > 1 ? 0.05 : 0.005);
  });

  it('a full fresh bed parts in halves', () => {
    const { lifted, result } = liftedOf(setup(undefined, [slide, slide]));
    expect(result.coverage).toBeGreaterThan(0.97);
    expect(lifted.onTileMm3 / (lifted.onTileMm3 + lifted.onFloorMm3)).toBeCloseTo(COMES_UP * result.coverage, 1);
    expect(lifted.backWet).toBeCloseTo(result.coverage, 9);
  });

  it('a skinned one stays on the floor, and the coat on the back', () => {
    const old = setup((s) => void (s.mortar.ageMin = 60));
    expect(liftedOf(old).lifted.backWet).toBeLessThan(0.05);
    expect(liftedOf(old).lifted.onTileMm3).toBeLessThan(0.05 * liftedOf(old).lifted.onFloorMm3);
    const coated = liftedOf(
      setup((s) => {
        s.mortar.ageMin = 60;
        s.butterMm = 1;
      }),
    );
    expect(coated.lifted.backWet).toBe(1);
    expect(coated.lifted.onTileMm3).toBeGreaterThan(0.95 * 200 * 150);
    // A coat that never met the bed is no contact.
    expect(coated.result.coverage).toBeLessThan(0.1);
  });
});

describe('the pull', () => {
  // The sand-heap roof (Nadai, Prigozhin): a full rectangle 100 × 200 × 4 mm at 400 Pa bears 83.333 N, and so it pulls.
  it('of a full rectangle is its plastic load', () => {
    const bed = flatBed({ lengthMm: 200, widthMm: 100, depthMm: 4, yieldPa: 400, cellMm: 1, endTerm: false });
    expect(Math.abs(liftTile(bed).figures.pullN / 83.333 - 1)).toBeLessThan(0.005);
  });

  it('never asks for more than the atmosphere bears', () => {
    const bed = flatBed({ lengthMm: 200, widthMm: 200, depthMm: 1, yieldPa: 4000, cellMm: 2, endTerm: false });
    const { pullN } = liftTile(bed).figures;
    expect(bed.load.forceN).toBeGreaterThan(pullN);
    expect(pullN).toBeLessThan(0.2 * 0.2 * 101_325);
  });
});

it('the last picture holds both sides, the bed before the lift with them; nothing is carried any more', () => {
  const { frame, result } = liftedOf(setup(undefined, [slide]));
  expect(frame.onTileMm).toHaveLength(frame.mortarMm.length);
  expect(frame.onFloorMm).toHaveLength(frame.mortarMm.length);
  expect(result.loadN).toBe(0);
  expect(result.history.at(-1)).toMatchObject({ loadN: 0, coverage: result.coverage });
  expect(() => runBed({ ...setup(), actions: [lift, slide] })).toThrow(/lift last/);
});
