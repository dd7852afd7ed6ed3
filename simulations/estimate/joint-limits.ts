import { decide, type Decision } from '../rules/decide.ts';
import { valueOf } from '../rules/rulebook.ts';
import type { StandardSet } from '../rules/rule.ts';
import { lippageShare } from '../tile/lippage.ts';
import type { Area } from './job-types.ts';
import { allowedWarp, isOver, longestEdge } from './tile-facts.ts';

/** The part of a length by which neighbours are offset; herringbone meets at an end and anywhere along, so at worst half. */
export function offsetOf(area: Area): number {
  if (area.pattern === 'offset') return area.offsetShare;
  return area.pattern === 'herringbone' ? 0.5 : 0;
}

/** The bow to reckon with on the longest edge: measured, or what the standard lets the tile have. mm */
export const bowToExpect = (area: Area, standards: StandardSet): number =>
  area.tile.measuredBowMm === null
    ? allowedWarp(area.tile, longestEdge(area.tile), standards).mm
    : Math.abs(area.tile.measuredBowMm);

/** Lippage the bow alone brings, mm. */
export const expectedLippage = (area: Area, standards: StandardSet): number =>
  lippageShare(offsetOf(area)) * bowToExpect(area, standards);

/** Joints are sold and named in fractions; a joint entered as 3.2 mm is the 1/8 in one. */
const JOINT_TOLERANCE_MM = 0.1;
export const isJointFrom = (joint: number, limit: number): boolean => joint >= limit - JOINT_TOLERANCE_MM;

/** Warpage that is added to a limit: what was measured; nobody may add what wasn't. */
const measured = (area: Area): number => Math.abs(area.tile.measuredBowMm ?? 0);

/** Most two edges may differ, with the warpage measured on these tiles. */
export function lippageLimit(area: Area, standards: StandardSet): Decision | null {
  const wide = isJointFrom(area.jointMm, valueOf('lippage.wide', 'from'));
  const stone = area.tile.material === 'stone';
  const nsw = isJointFrom(valueOf('lippage.nsw', 'joint'), area.jointMm)
    ? valueOf('lippage.nsw', 'narrow')
    : valueOf('lippage.nsw', area.tile.edge === 'rectified' ? 'ground' : 'lip');
  return decide('lippage', standards, [
    { rule: 'lippage.narrow', applies: !stone && !wide, value: valueOf('lippage.narrow', 'lip') + measured(area) },
    { rule: 'lippage.wide', applies: !stone && wide, value: valueOf('lippage.wide', 'lip') + measured(area) },
    { rule: 'lippage.stone', applies: stone, value: valueOf('lippage.stone', 'lip') },
    { rule: 'lippage.nsw', applies: !stone, value: nsw },
  ]);
}

/** Narrowest joint. */
export function jointLimit(area: Area, standards: StandardSet): Decision | null {
  const { tile } = area;
  const variation = valueOf('joint.variation', 'times') * (tile.sizeVariationMm ?? 0);
  const bond = valueOf('joint.running-bond', tile.edge === 'rectified' ? 'rectified' : 'calibrated');
  return decide('joint', standards, [
    { rule: 'joint.variation', applies: true, value: Math.max(variation, valueOf('joint.variation', 'least')) },
    {
      rule: 'joint.running-bond',
      applies: offsetOf(area) > 0 && isOver(longestEdge(tile), valueOf('joint.running-bond', 'side')),
      value: bond + measured(area),
    },
    { rule: 'joint.uk-floor', applies: area.surface === 'floor', value: valueOf('joint.uk-floor', 'joint') },
    { rule: 'joint.uni-rectified', applies: true, value: valueOf('joint.uni-rectified', 'joint') },
  ]);
}

/** Any offset is free where no rule speaks. */
const HALF = 0.5;

/** Most offset, a share of the length; null where no rule limits it. */
export function offsetLimit(area: Area, standards: StandardSet): { share: number; decision: Decision | null } {
  const long = isOver(longestEdge(area.tile), valueOf('offset.third', 'side'));
  const decision = decide('offset', standards, [
    { rule: 'offset.third', applies: long && !area.mockUpApproved, value: valueOf('offset.third', 'share') },
  ]);
  return { share: decision?.value ?? HALF, decision };
}
