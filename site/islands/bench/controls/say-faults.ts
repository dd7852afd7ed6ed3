import { withoutHidden } from '@sim/input/hidden.ts';
import type { Fault } from '@sim/input/fault.ts';
import type { UnitSystem } from '@sim/units/format.ts';
import { signed } from '@sim/units/signed.ts';
import { toInches } from '@sim/units/length.ts';
import { bench as words } from '@site/messages/en/bench.ts';

/** What follows from a control and is no control of its own: its fault says nothing to who typed. */
const FOLLOWS = 'cellMm';
const RANGE_MM = /^give a number from (-?[\d.]+) to (-?[\d.]+) mm$/;
/** What was typed is told by its beginning. */
const MOST_TOLD = 20;

/** What was typed, fit to stand in a sentence: short, and nothing in it that hides or turns the rest. */
function told(typed: string): string {
  const letters = [...withoutHidden(typed.trim(), '\uFFFD')];
  return letters.length > MOST_TOLD ? `${letters.slice(0, MOST_TOLD).join('')}…` : letters.join('');
}

/** Tenths of an inch that lie within a range in mm, so that what is offered is accepted. */
function inchesWithin(low: number, high: number): string {
  const tenths = [Math.ceil(toInches(low) * 10) / 10, Math.floor(toInches(high) * 10) / 10];
  const [least = '', most = ''] = tenths.map((inches) => signed(inches, String));
  return words.inchRange(least, most);
}

/** The sentences of the core are also for machines and write a hyphen before a number. */
const withMinus = (text: string): string => text.replace(/(?<= )-(?=\d)/g, '−');

/** Why what was typed is no length, in one sentence by the control's own name. */
export const notLengthSays = (label: string, typed: string, example: string): string =>
  told(typed) === ''
    ? words.fault(label, words.isEmpty, words.writeLike(example))
    : words.fault(label, words.notALength(told(typed)), words.writeLike(example));

/**
 * Why a control's value cannot be, in one sentence by the control's own name; empty for no fault.
 * @param inches what was typed, where it was typed in inches: the answer is then in inches too
 */
export function faultsSay(label: string, faults: readonly Fault[], inches?: string): string {
  const fault = faults.find(({ path }) => path !== FOLLOWS) ?? faults[0];
  if (!fault) return '';
  const range = inches === undefined ? null : RANGE_MM.exec(fault.accepted);
  const said =
    range && inches !== undefined
      ? words.fault(label, words.isTyped(told(inches)), inchesWithin(Number(range[1]), Number(range[2])))
      : words.fault(label, withMinus(fault.problem), withMinus(fault.accepted));
  return withoutHidden(said, '\uFFFD');
}

/** The place of a reading in the path of a fault: the last of its numbers, where a number ends it. */
const PLACE = /Mm(?:\[\d\])?\[(\d+)\]$/;

/** Why a line of readings cannot be, by the reading's number where one of them is the cause. */
export function lineFaultsSay(
  label: string,
  faults: readonly Fault[],
  pieces: readonly string[],
  units: UnitSystem,
): string {
  const fault = faults.find(({ path }) => path !== FOLLOWS);
  if (!fault) return faultsSay(label, faults);
  const at = fault.problem.startsWith('is a list') ? undefined : PLACE.exec(fault.path)?.[1];
  if (at === undefined) return faultsSay(label, [{ ...fault, problem: words.surface.readings(pieces.length) }]);
  const place = Number(at);
  return faultsSay(
    words.surface.reading(label, place + 1),
    [fault],
    units === 'metric' ? undefined : (pieces[place] ?? ''),
  );
}
