import { valueOf } from '@sim/rules/rulebook.ts';
import { lippageShare } from '@sim/tile/lippage.ts';

import { bothWays } from './both-ways.ts';

const limitShare = valueOf('warp.rectified', 'share');
const capMm = valueOf('warp.rectified', 'most');

/** Rectified planks in half bond with a narrow joint. */
export const bow = bothWays((size) => {
  const lengthMm = size(48);
  const measuredMm = size(1 / 32);
  const allowedMm = valueOf('lippage.narrow', 'lip') + measuredMm;
  const halfMm = lippageShare(1 / 2) * measuredMm;
  return {
    lengthMm,
    widthMm: size(8),
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
  };
});
