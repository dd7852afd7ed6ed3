import { withoutHidden } from '@sim/input/hidden.ts';
import type { Fault } from '@sim/input/fault.ts';
import { toInches } from '@sim/units/length.ts';
import { bench as words } from '@site/messages/en/bench.ts';

/** What follows from a control and is no control of its own: its fault says nothing to who typed. */
const FOLLOWS = 'cellMm';
const RANGE_MM = /^give a number from (-?[\d.]+) to (-?[\d.]+) mm$/;

/** Tenths of an inch that lie within a range in mm, so that what is offered is accepted. */
const inchesWithin = (low: number, high: number): string =>
  words.inchRange(Math.ceil(toInches(low) * 10) / 10, Math.floor(toInches(high) * 10) / 10);

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
      ? words.fault(label, words.isTyped(inches), inchesWithin(Number(range[1]), Number(range[2])))
      : words.fault(label, fault.problem, fault.accepted);
  return withoutHidden(said, '\uFFFD');
}
