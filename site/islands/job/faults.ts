import type { Fault } from '@sim/input/fault.ts';
import { formatLength, type UnitSystem } from '@sim/units/format.ts';

import type { AreaBoxId, JobBoxId } from './catalogue.ts';
import type { Draft } from './draft.ts';
import type { Misread } from './read-box.ts';
import { placeOf, type MisreadBox, type Place } from './to-job.ts';

/** A sentence for each box that was refused, by area and box; and for what no box stands for. */
export interface FormFaults {
  readonly areas: Readonly<Record<number, Partial<Record<AreaBoxId, string>>>>;
  readonly job: Partial<Record<JobBoxId, string>>;
  readonly rest: readonly string[];
}

/** A range the core gives in millimetres, in the reader's units. */
const inUnits = (accepted: string, units: UnitSystem): string =>
  accepted.replace(
    /(-?\d+(?:\.\d+)?) to (-?\d+(?:\.\d+)?) mm\b/,
    (_whole, least: string, most: string) =>
      `${formatLength(Number(least), units)} to ${formatLength(Number(most), units)}`,
  );

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/**
 * Gathers what the form did not understand and what the core refuses into one sentence beside each box. A box that was
 * not understood keeps that sentence; the core's word on the same box would only say that it is missing.
 */
export function formFaults(
  draft: Draft,
  misread: readonly MisreadBox[],
  refused: readonly Fault[],
  words: Record<Misread, string>,
): FormFaults {
  const areas: Record<number, Partial<Record<AreaBoxId, string>>> = {};
  const job: Partial<Record<JobBoxId, string>> = {};
  const rest: string[] = [];
  const say = (place: Place, sentence: string): void => {
    const boxes: Partial<Record<string, string>> = place.area === null ? job : (areas[place.area] ??= {});
    boxes[place.box] ??= sentence;
  };
  for (const box of misread) say(box, words[box.why]);
  for (const fault of refused) {
    const place = placeOf(draft, fault.path);
    const sentence = `${capital(inUnits(fault.accepted, draft.units))}.`;
    if (place) say(place, sentence);
    else rest.push(`${fault.path}: ${fault.problem}; ${inUnits(fault.accepted, draft.units)}.`);
  }
  return { areas, job, rest };
}

/** Whether a box of this area was refused. */
export const areaRefused = (faults: FormFaults, id: number): boolean => Object.keys(faults.areas[id] ?? {}).length > 0;
