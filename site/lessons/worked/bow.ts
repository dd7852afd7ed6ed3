import { lippageShare } from '@sim/tile/lippage.ts';
import { valueOf } from '@sim/rules/rulebook.ts';
import { inches } from '@sim/units/length.ts';

const lengthMm = inches(48);
const measuredMm = inches(1 / 32);
const limitShare = valueOf('warp.rectified', 'share');
const capMm = valueOf('warp.rectified', 'most');
const allowedMm = valueOf('lippage.narrow', 'lip') + measuredMm;
const halfMm = lippageShare(1 / 2) * measuredMm;

/** Rectified planks in half bond with a narrow joint. */
export const bow = {
  lengthMm,
  widthMm: inches(8),
  measuredMm,
  limitShare,
  byShareMm: limitShare * lengthMm,
  capMm,
  limitMm: Math.min(limitShare * lengthMm, capMm),
  jointMm: valueOf('joint.running-bond', 'rectified') + measuredMm,
  allowedMm,
  halfMm,
  thirdMm: lippageShare(1 / 3) * measuredMm,
  leftHalfMm: allowedMm - halfMm,
} as const;
