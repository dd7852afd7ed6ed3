import { valueOf } from '@sim/rules/rulebook.ts';

import { bothWays } from './both-ways.ts';

const leastMm = valueOf('bed.least', 'bed');
const allowedMm = valueOf('flatness.large', 'long');

/** A dip in a hall under large tile: what is allowed, and the bed it would take to fill it with mortar. mm */
export const dipWorked = bothWays((size) => {
  const dipMm = size(1 / 4);
  return {
    edgeMm: size(24),
    dipMm,
    allowedMm,
    overMm: dipMm - allowedMm,
    leastMm,
    bedMm: leastMm + dipMm,
    thinSetMm: valueOf('bed.most-thin-set', 'bed'),
    heavyMm: valueOf('bed.most-heavy', 'bed'),
  };
});
