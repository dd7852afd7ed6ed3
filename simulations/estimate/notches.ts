import { commonNotches } from '../trowel/common-notches.ts';
import { meanBedMm, type Notch, notchLabel } from '../trowel/notch.ts';
import type { StandardSet } from '../rules/rule.ts';
import { type SetHabits, setHabits } from '../rules/sets.ts';
import { MM_PER_INCH } from '../units/length.ts';
import type { NamedNotch } from './plan-types.ts';

/** Notches sold where trowels are marked in millimetres: width × depth, tooth as wide (common practice). */
const metric: readonly Notch[] = [
  { shape: 'square', widthMm: 3, depthMm: 3, toothMm: 3 },
  { shape: 'v', widthMm: 6, depthMm: 5, toothMm: 0 },
  { shape: 'square', widthMm: 4, depthMm: 4, toothMm: 4 },
  { shape: 'square', widthMm: 6, depthMm: 6, toothMm: 6 },
  { shape: 'square', widthMm: 8, depthMm: 8, toothMm: 8 },
  { shape: 'square', widthMm: 10, depthMm: 10, toothMm: 10 },
  { shape: 'square', widthMm: 12, depthMm: 12, toothMm: 12 },
  { shape: 'slanted', widthMm: 15, depthMm: 15, toothMm: 15 },
];

/** A 32nd of an inch to within a hundredth of a millimetre: the notch was made in inches. */
const isInch = (length: number): boolean => {
  const parts = (length / MM_PER_INCH) * 32;
  return Math.abs(parts - Math.round(parts)) < 0.0126;
};
const shapes = { square: 'square', v: 'V', u: 'U', slanted: 'slanted' } as const;
const millimetres = (value: number): string => String(Math.round(value * 10) / 10);

/** A notch with its stamp: fractions of an inch where it was made so, else millimetres. */
export const nameNotch = (notch: Notch): NamedNotch => {
  const { shape, widthMm, depthMm, toothMm } = notch;
  const inch = isInch(widthMm) && isInch(depthMm);
  return {
    shape,
    widthMm,
    depthMm,
    toothMm,
    label: inch ? notchLabel(notch) : `${millimetres(widthMm)} × ${millimetres(depthMm)} mm ${shapes[shape]}`,
  };
};

/** Mean bed a notch leaves with an unworn blade at an angle, mm. */
export const bedAt = (notch: Notch, angleDeg: number): number => meanBedMm({ ...notch, angleDeg, wearMm: 0 });

const trays: Record<SetHabits['notches'], readonly NamedNotch[]> = {
  inch: commonNotches.map(nameNotch),
  metric: metric.map(nameNotch),
};

/** The notches to choose from: those at hand, or what is sold. */
export const notchesFor = (standards: StandardSet, atHand: readonly Notch[] | null): readonly NamedNotch[] =>
  atHand ? atHand.map(nameNotch) : trays[setHabits[standards].notches];
