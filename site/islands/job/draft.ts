import type { UnitSystem } from '@sim/units/format.ts';

import { areaBoxIds, jobBoxIds, type AreaBoxId, type JobBoxId } from './catalogue.ts';
import { setForUnits } from '@sim/rules/sets.ts';

/**
 * What stands in the form: the text of every box exactly as typed, so that nothing is lost when a box is refused. An
 * empty box means "not said": the core's default holds and the sheet says so.
 */
export interface AreaDraft {
  /** Tells one area from another while they are moved about; never shown. */
  readonly id: number;
  readonly boxes: Readonly<Record<AreaBoxId, string>>;
}

export interface Draft {
  readonly version: 1;
  /** The system in which text without a unit is read. */
  readonly units: UnitSystem;
  readonly title: string;
  readonly job: Readonly<Record<JobBoxId, string>>;
  readonly areas: readonly AreaDraft[];
}

/** More areas than this is a building, not a job sheet; one page would no longer hold it. */
export const MOST_AREAS = 20;

const blank = <Id extends string>(ids: readonly Id[]): Record<Id, string> =>
  Object.fromEntries(ids.map((id) => [id, ''])) as Record<Id, string>;

export const blankArea = (): Record<AreaBoxId, string> => blank(areaBoxIds);
export const blankJob = (): Record<JobBoxId, string> => blank(jobBoxIds);

/** The start values of a new area: an ordinary floor, each box a choice the person can see and change. */
const startArea = (units: UnitSystem): Record<AreaBoxId, string> => ({
  ...blankArea(),
  area: units === 'imperial' ? '120' : '11',
  surface: 'floor',
  exposure: 'interior-dry',
  substrate: 'concrete',
  membrane: 'none',
  material: 'porcelain',
  length: units === 'imperial' ? '24' : '600',
  width: units === 'imperial' ? '12' : '300',
  thickness: units === 'imperial' ? '3/8' : '9',
  edge: 'rectified',
  pattern: 'offset',
  offset: '1/3',
  joint: units === 'imperial' ? '3/16' : '5',
});

export const freshDraft = (units: UnitSystem): Draft => ({
  version: 1,
  units,
  title: '',
  job: { ...blankJob(), standards: setForUnits(units) },
  areas: [{ id: 1, boxes: startArea(units) }],
});

const nextId = (draft: Draft): number => Math.max(0, ...draft.areas.map((area) => area.id)) + 1;

const withAreas = (draft: Draft, areas: readonly AreaDraft[]): Draft => ({ ...draft, areas });

export const setTitle = (draft: Draft, title: string): Draft => ({ ...draft, title });

export const setJobBox = (draft: Draft, box: JobBoxId, text: string): Draft => ({
  ...draft,
  job: { ...draft.job, [box]: text },
});

/** Several boxes of one area at once, as choosing a usual tile size does. */
export const setAreaBoxes = (draft: Draft, id: number, texts: Partial<Record<AreaBoxId, string>>): Draft =>
  withAreas(
    draft,
    draft.areas.map((area) => (area.id === id ? { ...area, boxes: { ...area.boxes, ...texts } } : area)),
  );

export const addArea = (draft: Draft): Draft =>
  draft.areas.length >= MOST_AREAS
    ? draft
    : withAreas(draft, [...draft.areas, { id: nextId(draft), boxes: startArea(draft.units) }]);

/** A copy right after its original, named so that the two can be told apart. */
export function duplicateArea(draft: Draft, id: number, copyName: (name: string) => string): Draft {
  const at = draft.areas.findIndex((area) => area.id === id);
  const original = draft.areas[at];
  if (!original || draft.areas.length >= MOST_AREAS) return draft;
  const copy = { id: nextId(draft), boxes: { ...original.boxes, name: copyName(original.boxes.name) } };
  return withAreas(draft, draft.areas.toSpliced(at + 1, 0, copy));
}

/** A job keeps at least one area. */
export const removeArea = (draft: Draft, id: number): Draft =>
  draft.areas.length === 1
    ? draft
    : withAreas(
        draft,
        draft.areas.filter((area) => area.id !== id),
      );

/** Moves an area by whole places; at either end it stays. */
export function moveArea(draft: Draft, id: number, places: number): Draft {
  const from = draft.areas.findIndex((area) => area.id === id);
  const area = draft.areas[from];
  const to = from + places;
  if (!area || to < 0 || to >= draft.areas.length) return draft;
  return withAreas(draft, draft.areas.toSpliced(from, 1).toSpliced(to, 0, area));
}
