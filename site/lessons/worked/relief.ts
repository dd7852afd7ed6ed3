import { valueOf } from '@sim/rules/rulebook.ts';
import { inches } from '@sim/units/length.ts';

import { bothWays } from './both-ways.ts';
import { bedAt, notchById } from './notch.ts';

const angleDeg = valueOf('trowel.angle', 'usual');
const bedMm = bedAt(notchById('1-4-3-8-in-square'), angleDeg);
/** A pronounced pattern (invented), as a rule of either kind reads it; and the part of the back that is valley. */
const rib = { imperial: inches(1 / 16), metric: 1.5 };
const valleyShare = 2 / 3;

/** What a ribbed back takes from the bed: each millimetre of mean relief is a litre on a square metre. */
export const relief = bothWays((_, units) => {
  const ribMm = rib[units];
  const reliefMm = ribMm * valleyShare;
  return { bedMm, ribMm, valleyShare, reliefMm, leftMm: bedMm - reliefMm, lostShare: reliefMm / bedMm };
});
