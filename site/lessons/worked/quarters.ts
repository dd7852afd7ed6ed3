import { valueOf } from '@sim/rules/rulebook.ts';
import { meanBedMm, ridgeHeightMm } from '@sim/trowel/notch.ts';

import { notchById } from './notch.ts';

const square = notchById('1-4-1-4-in-square');
const saw = notchById('1-4-3-16-in-v');
const usual = valueOf('trowel.angle', 'usual');
const steep = valueOf('trowel.angle', 'steep');
const shareAt = (angleDeg: number): number => ridgeHeightMm({ ...square, angleDeg, wearMm: 0 }) / square.depthMm;
const bed = (notch: typeof square): number => meanBedMm({ ...notch, angleDeg: usual, wearMm: 0 });

const oblong = notchById('1-4-3-8-in-square');

/** A square quarter-inch notch and a quarter-inch V, the blade as low as it may go. */
export const quarters = {
  usualShare: shareAt(usual),
  steepShare: shareAt(steep),
  leastMm: valueOf('bed.least', 'bed'),
  sawOfSquare: bed(saw) / bed(square),
  /** What is left of the bed of a notch deeper than wide, when width and depth are read the wrong way round. */
  swapped: bed({ ...oblong, widthMm: oblong.depthMm, depthMm: oblong.widthMm }) / bed(oblong),
  /** A quarter of the depth. */
  wearMm: square.depthMm / 4,
} as const;
