import { jointShare, riseInJoints } from '@sim/mortar/squeeze-up.ts';
import { meanBedMm, type Notch } from '@sim/trowel/notch.ts';

/** Limits that the rules set: least bed in mm, and the share of the joint's depth that mortar may fill. */
export interface SqueezeLimits {
  leastMm: number;
  riseShare: number;
}

export interface SqueezeSetup {
  notch: Notch;
  angleDeg: number;
  pieceMm: number;
  jointMm: number;
  thicknessMm: number;
}

/** `starved`: not even the least bed; `over`: out of the joint; `full`: no room for grout; `clear`: room left. */
export type SqueezeVerdict = 'starved' | 'over' | 'full' | 'clear';

export interface Squeeze {
  combedMm: number;
  bedMm: number;
  spareMm: number;
  jointShare: number;
  riseMm: number;
  /** Rise over the depth of the joint; above 1 it runs over the face. */
  riseShare: number;
  verdict: SqueezeVerdict;
}

/** Square pieces on a flattened bed, beaten in to the least bed: what comes up the joints. */
export function squeeze(
  { notch, angleDeg, pieceMm, jointMm, thicknessMm }: SqueezeSetup,
  limits: SqueezeLimits,
): Squeeze {
  const combedMm = meanBedMm({ ...notch, angleDeg, wearMm: 0 });
  const bedMm = Math.min(combedMm, limits.leastMm);
  const riseMm = riseInJoints({ combedMm, bedMm, pieceLengthMm: pieceMm, pieceWidthMm: pieceMm, jointMm });
  const riseShare = riseMm / thicknessMm;
  const verdict =
    combedMm < limits.leastMm ? 'starved' : riseShare > 1 ? 'over' : riseShare > limits.riseShare ? 'full' : 'clear';
  return {
    combedMm,
    bedMm,
    spareMm: combedMm - bedMm,
    jointShare: jointShare(pieceMm, pieceMm, jointMm),
    riseMm,
    riseShare,
    verdict,
  };
}

export interface SqueezePlate {
  width: number;
  height: number;
  wallY: number;
  mortar: string;
  tiles: { x: number; y: number; width: number; height: number }[];
  /** Where the grout's share of the joint begins, as a line across the drawing. */
  limitY: number;
  limit: string;
}

const WIDTH = 440;
const PIECES = 2;
const HEAD = 26;
const FOOT = 14;
const n = (value: number): string => String(Math.round(value * 100) / 100);

/** The section to scale: wall at the foot, bed, pieces, and mortar in the joints (a bead where it runs over). */
export function squeezePlate(setup: SqueezeSetup, now: Squeeze, limits: SqueezeLimits): SqueezePlate {
  const pitch = setup.pieceMm + setup.jointMm;
  const perMm = Math.min(WIDTH / (PIECES * pitch + setup.jointMm), 9);
  const thick = setup.thicknessMm * perMm;
  const bed = now.bedMm * perMm;
  const wallY = HEAD + thick + bed;
  const backY = wallY - bed;
  const left = (WIDTH - (PIECES * pitch + setup.jointMm) * perMm) / 2;
  const joint = setup.jointMm * perMm;
  const rise = Math.min(now.riseMm, setup.thicknessMm) * perMm;
  const bead = Math.min(now.riseMm - setup.thicknessMm, 2) * perMm;
  let mortar = `M${n(left)} ${n(wallY)}h${n(WIDTH - 2 * left)}v${n(-bed)}H${n(left)}z`;
  for (let i = 0; i <= PIECES; i += 1) {
    const x = left + i * pitch * perMm;
    mortar += `M${n(x)} ${n(backY)}v${n(-rise)}h${n(joint)}v${n(rise)}z`;
    if (bead > 0) mortar += `M${n(x - joint * 0.4)} ${n(HEAD)}q${n(joint * 0.9)} ${n(-2 * bead)} ${n(joint * 1.8)} 0z`;
  }
  const limitY = backY - thick * limits.riseShare;
  return {
    width: WIDTH,
    height: wallY + FOOT,
    wallY,
    mortar,
    tiles: Array.from({ length: PIECES }, (_, i) => ({
      x: left + joint + i * pitch * perMm,
      y: HEAD,
      width: setup.pieceMm * perMm,
      height: thick,
    })),
    limitY,
    limit: `M${n(left)} ${n(limitY)}H${n(WIDTH - left)}`,
  };
}
