import { runBed } from '../../simulations/bed/run.ts';
import { baseJobs } from './bases.ts';
import { bitmapOf } from './bitmap.ts';
import { type Method, METHODS, setupOf } from './methods.ts';

/** What is kept of a run: base job, method, coverage, the largest pocket (mm from the tile's centre, mm²), the picture. */
export type KeptRun = readonly [
  base: number,
  method: Method,
  coverage: number,
  pocket: readonly [xMm: number, yMm: number, areaMm2: number] | null,
  columns: number,
  rows: number,
  bits: string,
];

/** Figures are kept rounded: other engines may differ in a last bit, never in the third place. */
const thousandths = (value: number): number => Math.round(value * 1000) / 1000;

/** Runs one base job by one method and keeps what questions ask of it. */
export function recordRun(base: number, method: Method): KeptRun {
  const job = baseJobs[base];
  if (!job) throw new Error(`There is no base job ${base}.`);
  const { result, frame } = runBed(setupOf(job, method));
  const pocket = [...result.pockets].sort((a, b) => b.areaMm2 - a.areaMm2)[0];
  const { columns, rows, bits } = bitmapOf(frame, job.lengthMm, job.widthMm);
  return [
    base,
    method,
    thousandths(result.coverage),
    pocket ? [Math.round(pocket.xMm), Math.round(pocket.yMm), Math.round(pocket.areaMm2)] : null,
    columns,
    rows,
    bits,
  ];
}

/** Every base job by every method, in order. */
export const recordAll = (): KeptRun[] =>
  baseJobs.flatMap((_, base) => METHODS.map((method) => recordRun(base, method)));
