import { freshTile, type MarkedPull, type PullRecord } from '@quiz/records/pull-record.ts';
import { readNumber } from '@site/islands/job/read-number.ts';
import type { pulls } from '@site/messages/en/desk.ts';
import type { UnitSystem } from '@sim/units/format.ts';
import { parseLength } from '@sim/units/parse-length.ts';
import { setForUnits } from '@sim/rules/sets.ts';

/** The boxes of the form as typed. */
export interface PullForm {
  learner: string;
  day: string;
  standards: PullRecord['standards'];
  exposure: PullRecord['exposure'];
  surface: PullRecord['surface'];
  material: PullRecord['material'];
  length: string;
  width: string;
  thickness: string;
  predicted: string;
  /** Id of the notch; empty: not told. */
  notch: string;
  setBy: NonNullable<PullRecord['setBy']> | '';
  buttered: boolean;
  tiles: MarkedPull[];
}

export type PullBox = 'learner' | 'length' | 'width' | 'thickness' | 'predicted';

export const freshPullForm = (units: UnitSystem, day: string): PullForm => ({
  learner: '',
  day,
  standards: setForUnits(units),
  exposure: 'interior-dry',
  surface: 'floor',
  material: 'porcelain',
  length: units === 'imperial' ? '12' : '300',
  width: units === 'imperial' ? '12' : '300',
  thickness: units === 'imperial' ? '3/8' : '9',
  predicted: '',
  notch: '',
  setBy: '',
  buttered: false,
  tiles: [freshTile(), freshTile(), freshTile()],
});

/** A percentage from 0 to 100 as a share; null for an empty box, undefined for anything else. */
function shareIn(text: string): number | null | undefined {
  if (text.trim() === '') return null;
  const read = readNumber(text.replace('%', ''));
  return read.ok && read.value >= 0 && read.value <= 100 ? read.value / 100 : undefined;
}

/** What goes with the form's boxes into a record. */
export type Beside = Pick<PullRecord, 'id' | 'photo' | 'plates'>;

/** Reads the form; a box that cannot be read gets its sentence and nothing is kept. */
export function readPullForm(
  form: PullForm,
  units: UnitSystem,
  beside: Beside,
  say: (typeof pulls)['faults'],
): { record: PullRecord | null; faults: Partial<Record<PullBox, string>> } {
  const length = (text: string): number | null => parseLength(text, units === 'imperial' ? 'in' : 'mm');
  const sides = { length: length(form.length), width: length(form.width), thickness: length(form.thickness) };
  const predicted = shareIn(form.predicted);
  const within = (value: number | null, least: number, most: number): string | null =>
    value === null ? say.length : value < least || value > most ? say.range : null;
  const found: [PullBox, string | null][] = [
    ['learner', form.learner.trim() === '' ? say.learner : null],
    ['length', within(sides.length, 5, 3600)],
    ['width', within(sides.width, 5, 3600)],
    ['thickness', within(sides.thickness, 2, 60)],
    ['predicted', predicted === undefined ? say.share : null],
  ];
  const faults = Object.fromEntries(found.filter(([, sentence]) => sentence !== null)) as Partial<
    Record<PullBox, string>
  >;
  if (Object.keys(faults).length > 0) return { record: null, faults };
  const { learner, day, standards, exposure, surface, material, notch, setBy, buttered, tiles } = form;
  return {
    faults,
    record: {
      ...beside,
      learner: learner.trim(),
      day,
      standards,
      exposure,
      surface,
      material,
      lengthMm: sides.length ?? 0,
      widthMm: sides.width ?? 0,
      thicknessMm: sides.thickness ?? 0,
      predicted: predicted ?? null,
      notch: notch === '' ? null : notch,
      setBy: setBy === '' ? null : setBy,
      buttered,
      tiles,
    },
  };
}
