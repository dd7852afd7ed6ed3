/**
 * Balance after pushes off the middle and done again: there is a pressure under the tile, nowhere more than the bed can
 * bear at yield and nowhere less than nothing, whose sum is the load and whose middle is the load's place (the static
 * theorem of limit analysis). Found here by other means than the solver's: part of the yield pressure by a tilted plane.
 */
import fc from 'fast-check';
import { expect, it } from 'vitest';

import { actOn } from '@sim/bed/act.ts';
import { type Bed, settle, startBed } from '@sim/bed/bed.ts';
import { EMPTY, OPEN } from '@sim/bed/grid.ts';
import { GRAIN_STOP_MM, withWeight } from '@sim/bed/press.ts';
import type { BedAction } from '@sim/bed/types.ts';

import { DRAWS, draws, type Draw, seed, setupOf } from './bed-draws.ts';

/** What a cell of the tile's back can bear, N, and where, in shares of the tile's sides. */
interface Bearing {
  forceN: number;
  x: number;
  y: number;
}

/** Pressure a cell can bear, Pa: a front cell's air, and on the part its front has crossed the ridge's own. */
function bears({ grid, terms }: Bed, n: number): number {
  const { pressure, state, label, gap, cellMm } = grid;
  if (state[n] !== EMPTY) return pressure[n]!;
  const part = -1 - pressure[n]!;
  return terms.gaugePa[label[n]!]! + part * (terms.endPa + (part * terms.yieldPa * cellMm) / gap[n]!);
}

function bearings(bed: Bed): Bearing[] {
  const { state, columns, rim, tileColumns, tileRows, cellMm, originMm } = bed.grid;
  const { lengthMm, widthMm } = bed.setup.tile;
  const found: Bearing[] = [];
  for (let row = rim; row < rim + tileRows; row += 1)
    for (let column = rim; column < rim + tileColumns; column += 1) {
      const n = row * columns + column;
      if (state[n] === OPEN) continue;
      const pa = bears(bed, n);
      if (pa <= 0) continue;
      const x = (originMm[0] + column * cellMm) / lengthMm;
      const y = (originMm[1] + row * cellMm) / widthMm;
      found.push({ forceN: pa * cellMm * cellMm * 1e-6, x, y });
    }
  return found;
}

/**
 * Steepest way towards a plane a + bx + cy, cut off at 0 and 1, by which the bearings sum to the load in its place.
 * @returns how far off it ends: force over the load, and place in shares of the sides
 */
function leastMiss(parts: Bearing[], forceN: number, atX: number, atY: number): { force: number; place: number } {
  let [a, b, c] = [1, 0, 0];
  const most = parts.reduce((sum, part) => sum + part.forceN, 0);
  let miss = { force: 1, place: 1 };
  for (let n = 0; n < 4000; n += 1) {
    let [sum, sumX, sumY] = [0, 0, 0];
    for (const part of parts) {
      const share = Math.min(1, Math.max(0, a + b * part.x + c * part.y)) * part.forceN;
      sum += share;
      sumX += share * part.x;
      sumY += share * part.y;
    }
    const [lack, lackX, lackY] = [forceN - sum, forceN * atX - sumX, forceN * atY - sumY];
    miss = { force: Math.abs(lack) / forceN, place: Math.max(Math.abs(lackX), Math.abs(lackY)) / forceN };
    if (miss.force < 1e-4 && miss.place < 1e-4) break;
    // The potential behind this is convex, its curvature at most `most`; along x and y a third of that.
    a += lack / most;
    b += (4 * lackX) / most;
    c += (4 * lackY) / most;
  }
  return miss;
}

/** Twice off the middle, to one side and to the other, and at last where the draw says. */
function pushes(draw: Draw, forceN: number, lengthMm: number, widthMm: number): BedAction[] {
  const at = (x: number, y: number, times: number): BedAction => ({
    do: 'press',
    forceN: times * forceN,
    atX: x * lengthMm,
    atY: y * widthMm,
  });
  const [x, y] = draw.off;
  return [at(-x, y, 0.5), at(-y, -x, 0.7), at(x, y, 1)];
}

it(
  'after three pushes off the middle the bed bears the last one in its place, unless grains carry the tile',
  { timeout: 300_000 },
  () => {
    let onGrains = 0;
    fc.assert(
      fc.property(draws, (draw) => {
        const setup = setupOf(draw);
        const { lengthMm, widthMm } = setup.tile;
        const bed = startBed(setup);
        const forceN = (draw.push * draw.yieldPa * lengthMm * widthMm) / 1e6;
        const actions = pushes(draw, forceN, lengthMm, widthMm);
        for (const action of actions) {
          actOn(bed, action, () => undefined);
          settle(bed);
        }
        const last = actions.at(-1);
        if (last?.do !== 'press') throw new Error('the last action is a push');
        if (bed.load.leastGap <= GRAIN_STOP_MM) {
          onGrains += 1;
          return;
        }
        const applied = withWeight(bed, last);
        const miss = leastMiss(bearings(bed), applied.forceN, applied.atX / lengthMm, applied.atY / widthMm);
        expect(miss.force).toBeLessThan(0.01);
        expect(miss.place).toBeLessThan(0.02);
      }),
      { seed, numRuns: DRAWS },
    );
    expect(onGrains).toBeLessThan(DRAWS / 10);
  },
);
