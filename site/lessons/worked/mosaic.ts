import { jointShare, riseInJoints } from '@sim/mortar/squeeze-up.ts';
import { valueOf } from '@sim/rules/rulebook.ts';
import { inches } from '@sim/units/length.ts';

import { bedAt, notchById } from './notch.ts';

const pieceMm = inches(1);
const jointMm = inches(1 / 8);
const thickMm = inches(1 / 4);
const notch = '1-4-3-8-in-square';
const better = '1-4-1-4-in-square';
const angleDeg = valueOf('trowel.angle', 'usual');
const steepDeg = valueOf('trowel.angle', 'steep');
const bedMm = valueOf('bed.least', 'bed');

const rise = (combedMm: number): number =>
  riseInJoints({ combedMm, bedMm, pieceLengthMm: pieceMm, pieceWidthMm: pieceMm, jointMm });

const combedMm = bedAt(notchById(notch), angleDeg);
const riseMm = rise(combedMm);
const betterRiseMm = rise(bedAt(notchById(better), steepDeg));

/** Mosaic set with a floor notch, and with a smaller one flattened: how far mortar comes up in the joint. mm */
export const mosaicWorked = {
  pieceMm,
  jointMm,
  thickMm,
  notch,
  better,
  angleDeg,
  steepDeg,
  combedMm,
  bedMm,
  spareMm: combedMm - bedMm,
  pitchMm: pieceMm + jointMm,
  jointShare: jointShare(pieceMm, pieceMm, jointMm),
  riseMm,
  riseShare: riseMm / thickMm,
  betterRiseMm,
  betterShare: betterRiseMm / thickMm,
};
