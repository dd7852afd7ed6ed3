import type { PullBitmap } from '../engine/picture.ts';
import { type BaseJob, baseJobs } from './bases.ts';
import { isWet } from './bitmap.ts';
import { keptRuns } from './kept.ts';
import { type Method, METHODS } from './methods.ts';

/** A kept run, ready to be asked about. */
export interface ShelfRun {
  job: BaseJob;
  method: Method;
  coverage: number;
  /** The largest pocket: mm from the tile's centre, mm². */
  pocket: { xMm: number; yMm: number; areaMm2: number } | null;
  pull: PullBitmap;
}

export const BASES = baseJobs.length;

/** The kept run of a base job by a method. @throws when the shelf was not written for it */
export function shelfRun(base: number, method: Method): ShelfRun {
  const kept = keptRuns[base * METHODS.length + METHODS.indexOf(method)];
  const job = baseJobs[base];
  if (!kept || !job) throw new Error(`No run of base job ${base} by ${method} is kept.`);
  const [, , coverage, pocket, columns, rows, bits] = kept;
  return {
    job,
    method,
    coverage,
    pocket: pocket && { xMm: pocket[0], yMm: pocket[1], areaMm2: pocket[2] },
    pull: { columns, rows, bits },
  };
}

/** The run seen in a mirror, once or twice: the same bed laid the other way round, so as many pictures again. */
export function mirrored(run: ShelfRun, acrossX: boolean, acrossY: boolean): ShelfRun {
  const { columns, rows } = run.pull;
  let bits = '';
  for (let row = 0; row < rows; row++)
    for (let start = 0; start < columns; start += 4) {
      let digit = 0;
      for (let bit = 0; bit < 4 && start + bit < columns; bit++) {
        const column = start + bit;
        if (isWet(run.pull, acrossX ? columns - 1 - column : column, acrossY ? rows - 1 - row : row)) digit |= 8 >> bit;
      }
      bits += digit.toString(16);
    }
  const pocket = run.pocket && {
    ...run.pocket,
    xMm: acrossX ? -run.pocket.xMm : run.pocket.xMm,
    yMm: acrossY ? -run.pocket.yMm : run.pocket.yMm,
  };
  return { ...run, pocket, pull: { columns, rows, bits } };
}
