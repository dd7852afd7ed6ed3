/** Our march beside a plain binary-heap fast march of the same field, in the same run. */
import { performance } from 'node:perf_hooks';

import { type Bed, sinkBy, startBed } from '../../simulations/bed/bed.ts';
import { defaultSetup } from '../../simulations/bed/defaults.ts';
import { classify } from '../../simulations/bed/classify.ts';
import { FULL, TOUCHED } from '../../simulations/bed/grid.ts';
import { march } from '../../simulations/bed/march.ts';
import { heapMarch } from './heap-march.ts';
import type { Section } from './section.ts';

interface MarchRow {
  cellMm: number;
  cells: number;
  oursMs: number;
  heapMs: number;
  /** Heap over ours. */
  ratio: number;
  /** Greatest difference of pressure, as a share of the greatest pressure. */
  differs: number;
}

const ROUNDS = 5;

/** The middle of several timings, ms; `before` is not timed. */
function middleOf(work: () => void, before: () => void): number {
  const times = Array.from({ length: ROUNDS }, () => {
    before();
    const begun = performance.now();
    work();
    return performance.now() - begun;
  });
  return times.sort((a, b) => a - b)[Math.floor(ROUNDS / 2)] ?? NaN;
}

/** A full even layer under a 12 × 24 in tile: the whole field is marched. */
function evenBed(cellMm: number): Bed {
  const setup = defaultSetup();
  Object.assign(setup.tile, { lengthMm: 610, widthMm: 305, bowLengthMm: 0 });
  setup.comb.pattern = 'flat';
  setup.trowel.depthMm = 4;
  setup.cellMm = cellMm;
  const bed = startBed(setup);
  sinkBy(bed, 0.1, 0, 0);
  return bed;
}

const marchRows = (): MarchRow[] =>
  [2.54, 1.27, 0.9].map((cellMm) => {
    const { grid, terms } = evenBed(cellMm);
    const anew = (): void => {
      classify(grid, TOUCHED);
    };
    let heap: ArrayLike<number> = [];
    const heapMs = middleOf(() => {
      heap = heapMarch(grid, terms);
    }, anew);
    const oursMs = middleOf(() => {
      march(grid, terms);
    }, anew);
    let most = 0;
    let off = 0;
    for (let n = 0; n < heap.length; n += 1) {
      const value = heap[n] ?? 0;
      if ((grid.state[n] ?? 0) < FULL) continue;
      most = Math.max(most, value);
      off = Math.max(off, Math.abs(value - (grid.pressure[n] ?? 0)));
    }
    const tenth = (value: number): number => Math.round(value * 10) / 10;
    return {
      cellMm,
      cells: grid.state.length,
      oursMs: tenth(oursMs),
      heapMs: tenth(heapMs),
      ratio: tenth(heapMs / oursMs),
      differs: Number((off / most).toPrecision(2)),
    };
  });

/** The heap's march of 121,024 cells, ms: what tells machines apart. */
export const yardstickMs = (): number => marchRows().find(({ cellMm }) => cellMm === 1.27)?.heapMs ?? NaN;

/** The heap's time on the machine the budgets were held on, ms. */
export const YARDSTICK_MS = 35;

/** A yardstick to be laid beside other work, quick to use: each time gives how many times slower this machine is just now. */
export function yardstick(): () => number {
  const { grid, terms } = evenBed(1.27);
  const times = (): number => {
    classify(grid, TOUCHED);
    const begun = performance.now();
    heapMarch(grid, terms);
    return (performance.now() - begun) / YARDSTICK_MS;
  };
  for (let n = 0; n < ROUNDS; n += 1) times();
  // The first after a rest is slow on any machine.
  return () => Math.min(times(), times());
}

export const marchSection = (): Section => ({
  title: 'The march of one pressure field beside a binary-heap march of the same',
  says: 'A full even layer under a 12 × 24 in tile, the whole field at once, in the same process: `ratio` is the heap’s time over ours, `differs` the greatest difference of pressure as a share of the greatest pressure.',
  rows: marchRows(),
});
