import { readJob } from '@sim/estimate/job.ts';
import type { Job } from '@sim/estimate/job-types.ts';
import { planJob } from '@sim/estimate/plan.ts';
import type { AreaPlan, Plan } from '@sim/estimate/plan-types.ts';
import { judgePull, readPull } from '@sim/judge/judge.ts';
import type { Judgement } from '@sim/judge/pull-types.ts';

type Loose = Record<string, unknown>;

/** A job of one area: a 10 m² dry floor on flat concrete, unless said otherwise. */
export function jobOf(tile: Loose, area: Loose = {}, job: Loose = {}): Job {
  const reading = readJob({
    ...job,
    areas: [{ areaM2: 10, flatnessMm: 3, flatnessOverMm: 3050, ...area, tile }],
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.value.job;
}

export const planOf = (tile: Loose, area: Loose = {}, job: Loose = {}): Plan => planJob(jobOf(tile, area, job));

export function areaOf(tile: Loose, area: Loose = {}, job: Loose = {}): AreaPlan {
  const [first] = planOf(tile, area, job).areas;
  if (!first) throw new Error('no area');
  return first;
}

export function judged(input: Loose): Judgement {
  const reading = readPull(input);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return judgePull(reading.value.pull);
}

/** So many tiles alike. */
export const alike = (count: number, tile: Loose): Loose[] => Array.from({ length: count }, () => tile);

export const square = (inches: number): Loose => ({ lengthMm: inches * 25.4, widthMm: inches * 25.4 });
export const oblong = (length: number, width: number): Loose => ({ lengthMm: length * 25.4, widthMm: width * 25.4 });
