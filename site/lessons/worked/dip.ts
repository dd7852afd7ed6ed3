import { valueOf } from '@sim/rules/rulebook.ts';
import { inches } from '@sim/units/length.ts';

const edgeMm = inches(24);
const dipMm = inches(1 / 4);
const leastMm = valueOf('bed.least', 'bed');
const allowedMm = valueOf('flatness.large', 'long');

/** A dip in a hall under large tile: what is allowed, and the bed it would take to fill it with mortar. mm */
export const dipWorked = {
  edgeMm,
  dipMm,
  allowedMm,
  overMm: dipMm - allowedMm,
  leastMm,
  bedMm: leastMm + dipMm,
  thinSetMm: valueOf('bed.most-thin-set', 'bed'),
  heavyMm: valueOf('bed.most-heavy', 'bed'),
};
