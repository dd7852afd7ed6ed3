import { areaDefaults } from '../../simulations/estimate/defaults.ts';
import type { Area, JobTile } from '../../simulations/estimate/job.ts';

type Given = Partial<Omit<Area, 'tile'>> & { tile: Partial<JobTile> & { lengthMm: number; widthMm: number } };

/** An area of a job as the job sheet would fill it in, for questions whose key the estimator computes. */
export function drawnArea(given: Given): Area {
  const base = areaDefaults(given, 0, 'north-america');
  return { ...base, areaM2: 10, ...given, tile: { ...base.tile, ...given.tile } };
}
