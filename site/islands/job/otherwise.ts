import type { Assumed } from '@sim/estimate/job.ts';

import { AREA_BOXES, JOB_BOXES, type AreaBoxId, type Box, type JobBoxId } from './catalogue.ts';
import type { Draft } from './draft.ts';
import { showValue } from './echo.ts';
import { placeOf } from './to-job.ts';

/** What holds where a box is left empty, in words, so that no default works unseen. */
export interface Otherwise {
  readonly areas: Readonly<Record<number, Partial<Record<AreaBoxId, string>>>>;
  readonly job: Partial<Record<JobBoxId, string>>;
}

/**
 * Puts the core's list of defaults beside the boxes they stand in for.
 * @param wordOf the word of a choice, by box
 */
export function otherwiseOf(
  draft: Draft,
  assumed: Assumed,
  wordOf: (box: string, choice: string) => string,
): Otherwise {
  const areas: Record<number, Partial<Record<AreaBoxId, string>>> = {};
  const job: Partial<Record<JobBoxId, string>> = {};
  for (const [path, value] of Object.entries(assumed)) {
    const place = placeOf(draft, path);
    if (!place) continue;
    const box: Box | undefined =
      place.area === null ? JOB_BOXES[place.box as JobBoxId] : AREA_BOXES[place.box as AreaBoxId];
    const text =
      typeof value === 'number'
        ? showValue(box, value, draft.units)
        : typeof value === 'string'
          ? wordOf(place.box, value)
          : null;
    if (text === null) continue;
    const boxes: Partial<Record<string, string>> = place.area === null ? job : (areas[place.area] ??= {});
    boxes[place.box] = text;
  }
  return { areas, job };
}
