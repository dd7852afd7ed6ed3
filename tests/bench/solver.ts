/** The solver's budget: a 12 × 24 in tile, press and four strokes, at eight cells and more a pitch, on one core. */
import { performance } from 'node:perf_hooks';

import { defaultSetup } from '../../simulations/bed/defaults.ts';
import { runBed } from '../../simulations/bed/run.ts';
import type { BedAction, BedSetup } from '../../simulations/bed/types.ts';

export interface SolverRow {
  bed: string;
  cells: number;
  steps: number;
  ms: number;
  nsPerCellStep: number;
  budgetMs: number;
  holds: boolean;
}

const actions: BedAction[] = [
  { do: 'press', forceN: 200, atX: 0, atY: 0 },
  { do: 'slide', forceN: 200, strokeMm: 6, strokes: 4, directionDeg: 0, speedMmS: 20 },
];

function sized(lengthMm: number, widthMm: number): BedSetup {
  const base = defaultSetup();
  return { ...base, tile: { ...base.tile, lengthMm, widthMm, bowLengthMm: 1 }, actions };
}

const beds: { bed: string; setup: BedSetup; budgetMs: number }[] = [
  { bed: '12 × 24 in', setup: sized(610, 305), budgetMs: 500 },
  { bed: '24 × 48 in', setup: sized(1220, 610), budgetMs: 2000 },
];

/** The middle of three runs each, after one to warm up. */
export const solverRows = (): SolverRow[] =>
  beds.map(({ bed, setup, budgetMs }) => {
    runBed(setup);
    const runs = [0, 1, 2]
      .map(() => {
        const begun = performance.now();
        const { result } = runBed(setup);
        return { ms: performance.now() - begun, result };
      })
      .sort((a, b) => a.ms - b.ms);
    const middle = runs[1] ?? { ms: NaN, result: runBed(setup).result };
    const { cells, steps } = middle.result;
    const ms = Math.round(middle.ms);
    return {
      bed,
      cells,
      steps,
      ms,
      nsPerCellStep: Math.round((middle.ms * 1e7) / (cells * steps)) / 10,
      budgetMs,
      holds: ms <= budgetMs,
    };
  });
