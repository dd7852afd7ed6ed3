import { valueOf } from '@sim/rules/rulebook.ts';

import { bedAt, notchById } from './notch.ts';

const angleDeg = valueOf('trowel.angle', 'usual');
const bedMm = bedAt(notchById('1-4-3-8-in-square'), angleDeg);
/** A pronounced pattern (invented): depth of the ribs, and the part of the back that is valley. */
const ribMm = 1.5;
const valleyShare = 2 / 3;
const reliefMm = ribMm * valleyShare;

/** What a ribbed back takes from the bed: each millimetre of mean relief is a litre on a square metre. */
export const relief = {
  bedMm,
  ribMm,
  valleyShare,
  reliefMm,
  leftMm: bedMm - reliefMm,
  lostShare: reliefMm / bedMm,
} as const;
