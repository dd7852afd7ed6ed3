import { lippageShare } from '@sim/tile/lippage.ts';

/** What the rules say, read when the page is built. Lengths mm, shares 0…1. */
export interface WarpRules {
  warpShare: number;
  warpMostMm: number;
  narrowFromMm: number;
  wideFromMm: number;
  narrowLipMm: number;
  wideLipMm: number;
  offsetSideMm: number;
  offsetShare: number;
  jointRectifiedMm: number;
}

export interface WarpCase {
  lengthMm: number;
  /** Measured bow, mm; cupped is below nought. */
  bowMm: number;
  /** Share of the length. */
  offset: number;
  jointMm: number;
}

export interface WarpReading {
  /** Most that a rectified edge of this length may be bowed. */
  bowLimitMm: number;
  bowHolds: boolean;
  allowedMm: number;
  expectedMm: number;
  /** Left for floor, bed and hand; below nought when the bow alone is too much. */
  leftMm: number;
  offsetHolds: boolean;
  jointNeededMm: number;
  jointHolds: boolean;
}

/** A sixty-fourth is all a feeler gauge or a nominal joint is good for. */
const NOMINAL_MM = 0.1;

/** Lippage to expect from the bow against what is allowed, for rectified tile. */
export function readWarp(one: WarpCase, rules: WarpRules): WarpReading {
  const bow = Math.abs(one.bowMm);
  const wide = one.jointMm >= rules.wideFromMm - NOMINAL_MM;
  const long = one.lengthMm > rules.offsetSideMm;
  const bowLimitMm = Math.min(rules.warpShare * one.lengthMm, rules.warpMostMm);
  const allowedMm = (wide ? rules.wideLipMm : rules.narrowLipMm) + bow;
  const expectedMm = lippageShare(one.offset) * bow;
  const jointNeededMm = long && one.offset > 0 ? rules.jointRectifiedMm + bow : rules.narrowFromMm;
  return {
    bowLimitMm,
    bowHolds: bow <= bowLimitMm + 1e-9,
    allowedMm,
    expectedMm,
    leftMm: allowedMm - expectedMm,
    offsetHolds: !long || one.offset <= rules.offsetShare + 0.005,
    jointNeededMm,
    jointHolds: one.jointMm >= jointNeededMm - NOMINAL_MM,
  };
}
