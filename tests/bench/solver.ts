/** The solver's budgets: time of whole runs, bytes of state a cell, cost in proportion to cells, and a first run. */
import { spawnSync } from 'node:child_process';
import { performance } from 'node:perf_hooks';

import { startBed } from '../../simulations/bed/bed.ts';
import { defaultSetup } from '../../simulations/bed/defaults.ts';
import { runBed } from '../../simulations/bed/run.ts';
import type { BedAction, BedSetup } from '../../simulations/bed/types.ts';
import { middle, type Section } from './section.ts';

const BYTES_A_CELL = 40;

const actions = (scale: number): BedAction[] => [
  { do: 'press', forceN: 200 * scale, atX: 0, atY: 0 },
  { do: 'slide', forceN: 200 * scale, strokeMm: 6, strokes: 4, directionDeg: 0, speedMmS: 20 },
];

/** @param scale of the forces, so that tiles of other sizes carry alike */
export function sized(lengthMm: number, widthMm: number, scale = 1): BedSetup {
  const base = defaultSetup();
  return { ...base, tile: { ...base.tile, lengthMm, widthMm, bowLengthMm: 1 }, actions: actions(scale) };
}

/** Side of a cell of the lessons' live figures, mm; `tests/unit/live-figure.test.ts` holds them to it. */
export const LESSON_CELL_MM = 25.4 / 16;

/** A bed in the cells of a lesson's live figure: a hand-sized tile on deep quarter-inch ridges, pressed and moved four times. */
export function lessonSized(pattern: 'straight' | 'swirl'): BedSetup {
  const base = defaultSetup();
  return {
    ...base,
    tile: { ...base.tile, lengthMm: 150, widthMm: 150 },
    trowel: { ...base.trowel, widthMm: 6.35, depthMm: 9.525, toothMm: 6.35 },
    comb: { ...base.comb, pattern },
    cellMm: LESSON_CELL_MM,
    actions: actions(0.1),
  };
}

interface Timed {
  ms: number;
  cpuMs: number;
  cells: number;
  steps: number;
}

/** One run: by the clock, and the time that its one thread had of the processor. */
function timed(setup: BedSetup): Timed {
  const begun = performance.now();
  const before = process.threadCpuUsage();
  const { result } = runBed(setup);
  const { user, system } = process.threadCpuUsage(before);
  return {
    ms: performance.now() - begun,
    cpuMs: (user + system) / 1000,
    cells: result.cells,
    steps: result.steps,
  };
}

/** The middle of three runs, after one to warm up. */
function run(setup: BedSetup): Timed {
  runBed(setup);
  const runs = [timed(setup), timed(setup), timed(setup)];
  const [first] = runs as [Timed];
  return { ...first, ms: middle(runs.map(({ ms }) => ms)), cpuMs: middle(runs.map(({ cpuMs }) => cpuMs)) };
}

const FIRST = `import { solverFirst } from './tests/bench/solver.ts'; process.stdout.write(JSON.stringify(solverFirst()))`;

/** The first run of a fresh process, before anything is compiled; read by the text above. @public */
export const solverFirst = (): Timed => timed(sized(610, 305));

function firstRun(): Timed {
  const asked = ['--input-type=module', '--eval', FIRST];
  const runs = [0, 1, 2].map(() => JSON.parse(spawnSync(process.execPath, asked).stdout.toString()) as Timed);
  const [first] = runs as [Timed];
  return { ...first, ms: middle(runs.map(({ ms }) => ms)), cpuMs: middle(runs.map(({ cpuMs }) => cpuMs)) };
}

const budgets: [bed: string, setup: () => Timed, budgetMs: number | null][] = [
  ['12 × 24 in', () => run(sized(610, 305)), 500],
  ['24 × 48 in', () => run(sized(1220, 610)), 2000],
  ['12 × 24 in, first run of a fresh process', firstRun, 500],
  ['6 × 6 in, cells as in the lessons', () => run(lessonSized('straight')), null],
  ['6 × 6 in, cells as in the lessons, swirled', () => run(lessonSized('swirl')), null],
];

export const solverSection = (): Section => ({
  title: 'Bed solver: press and four strokes',
  says: 'A bowed tile on ridges of 25.4 mm pitch in cells of 1.27 mm (20 a pitch); with cells as in the lessons, a flat one on ridges of 12.7 mm in cells of 1.59 mm (8 a pitch), worked harder than any figure of a lesson: what those cost stands in the next table, with its budget. The middle of three runs. `ms` is by the clock, `cpuMs` what the one thread had of the processor: on a machine that is busy beside it only the second can be compared, and it is held against the budget.',
  rows: budgets.map(([bed, measure, budgetMs]) => {
    const { ms, cpuMs, cells, steps } = measure();
    return {
      bed,
      cells,
      steps,
      ms: Math.round(ms),
      cpuMs: Math.round(cpuMs),
      budgetMs,
      holds: budgetMs === null ? '' : cpuMs <= budgetMs,
    };
  }),
});

/** All typed arrays that a grid holds, bytes a cell. */
export function bytesACell(setup: BedSetup): number {
  const { grid } = startBed(setup);
  const arrays = Object.values(grid).filter((value) => ArrayBuffer.isView(value));
  return arrays.reduce((sum, { byteLength }) => sum + byteLength, 0) / grid.state.length;
}

export const cellsSection = (): Section => ({
  title: 'Bed solver: cost and state a cell',
  says: `The same bed at three sizes of cell: nanoseconds a cell and step stay alike when cost is linear in the cells. State is every typed array of the grid; budget ${BYTES_A_CELL} bytes a cell.`,
  rows: [2.54, 1.27, 0.635].map((cellMm) => {
    const setup = { ...sized(610, 305), cellMm };
    const { cpuMs, cells, steps } = run(setup);
    const bytes = bytesACell(setup);
    return {
      cellMm,
      cells,
      steps,
      cpuMs: Math.round(cpuMs),
      nsPerCellStep: Math.round((cpuMs * 1e7) / (cells * steps)) / 10,
      bytesACell: Math.round(bytes * 10) / 10,
      holds: bytes <= BYTES_A_CELL,
    };
  }),
});
