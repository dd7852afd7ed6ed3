import type { UnitSystem } from '@sim/units/format.ts';

import { AREA_BOXES, areaBoxIds, JOB_BOXES, jobBoxIds, type Box } from './catalogue.ts';
import { freshDraft, type Draft } from './draft.ts';
import { readBox } from './read-box.ts';
import { readNumber } from './read-number.ts';

/** The unit word a bare number takes in a box, or null where units make no difference. */
function bareUnit(box: Box, units: UnitSystem): string | null {
  switch (box.kind) {
    case 'length':
      return box.bare?.[units] ?? null;
    case 'area':
      return units === 'imperial' ? 'ft²' : 'm²';
    case 'weight':
      return units === 'imperial' ? 'lb' : 'kg';
    case 'temperature':
      return units === 'imperial' ? '°F' : '°C';
    default:
      return null;
  }
}

/** The two sides of a room each get the unit. */
const withUnit = (text: string, unit: string): string =>
  unit === 'ft²' || unit === 'm²'
    ? /[x×]/i.test(text)
      ? text
          .split(/[x×]/i)
          .map((side) => withUnit(side.trim(), unit === 'ft²' ? 'ft' : 'm'))
          .join(' × ')
      : readNumber(text).ok
        ? `${text.trim()} ${unit}`
        : text
    : readNumber(text).ok
      ? `${text.trim()} ${unit}`
      : text;

/**
 * The same draft read in the other system. A start value becomes the other system's usual one; what a person typed
 * keeps its exact meaning by taking its unit with it (`1/8` becomes `1/8 in`), so that nothing is rounded away.
 */
export function switchUnits(draft: Draft, units: UnitSystem): Draft {
  if (draft.units === units) return draft;
  const before = freshDraft(draft.units);
  const after = freshDraft(units);
  const carry = (box: Box, text: string, startBefore: string, startAfter: string): string => {
    const unit = bareUnit(box, draft.units);
    if (unit === null || text.trim() === '') return text;
    if (text === startBefore) return startAfter;
    return readBox(box, text, draft.units).state === 'read' ? withUnit(text, unit) : text;
  };
  const start = { before: before.areas[0], after: after.areas[0] };
  return {
    ...draft,
    units,
    job: Object.fromEntries(
      jobBoxIds.map((id) => [id, carry(JOB_BOXES[id], draft.job[id], before.job[id], after.job[id])]),
    ) as Draft['job'],
    areas: draft.areas.map((area) => ({
      ...area,
      boxes: Object.fromEntries(
        areaBoxIds.map((id) => [
          id,
          carry(AREA_BOXES[id], area.boxes[id], start.before?.boxes[id] ?? '', start.after?.boxes[id] ?? ''),
        ]),
      ) as typeof area.boxes,
    })),
  };
}
