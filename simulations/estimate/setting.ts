import { type RuleId, valueOf } from '../rules/rulebook.ts';
import type { StandardSet } from '../rules/rule.ts';
import { setHabits } from '../rules/sets.ts';
import type { Area } from './job-types.ts';
import type { CombPlan, NamedNotch, SettingMethod } from './plan-types.ts';
import { isMosaic, isOutdoor, isOver, isPanel, longestEdge } from './tile-facts.ts';

/** How the tile is brought into the bed. */
export function methodFor(area: Area, notch: NamedNotch): { method: SettingMethod; rule: RuleId; travelMm: number } {
  const { tile } = area;
  if (isPanel(tile))
    return area.surface === 'floor'
      ? { method: 'walk-in', rule: 'panel.floor', travelMm: 0 }
      : { method: 'vibrate', rule: 'panel.wall', travelMm: 0 };
  if (isMosaic(tile)) return { method: 'beat-in', rule: 'mosaic.flatten', travelMm: 0 };
  if (notch.shape === 'slanted')
    return {
      method: 'collapse',
      rule: isOver(longestEdge(tile), valueOf('set.long-edge', 'edge')) ? 'set.long-edge' : 'set.joint-limits',
      travelMm: 0,
    };
  return { method: 'slide', rule: 'set.travel', travelMm: notch.widthMm };
}

/** Which way the ridges run. 0° is along the tile's length. */
export function combDirection(area: Area): Pick<CombPlan, 'directionDeg' | 'along'> & { rule: RuleId } {
  const { lengthMm, widthMm } = area.tile;
  if (area.membrane === 'heated-mat')
    return { directionDeg: lengthMm >= widthMm ? 90 : 0, along: 'cable', rule: 'comb.cable' };
  // Ridges parallel to the short side run along the width when the length is the longer.
  if (lengthMm > widthMm) return { directionDeg: 90, along: 'short-side', rule: 'comb.short-side' };
  if (lengthMm < widthMm) return { directionDeg: 0, along: 'short-side', rule: 'comb.short-side' };
  return { directionDeg: 90, along: 'either-side', rule: 'comb.straight' };
}

export interface ButterReason {
  how: 'none' | 'flat' | 'combed';
  rule: RuleId;
}

/** Whether the back is buttered whatever the prediction says; null leaves it to the prediction. */
export function butterByRule(area: Area, standards: StandardSet): ButterReason | null {
  const { tile } = area;
  if (isMosaic(tile)) return { how: 'none', rule: 'mosaic.flatten' };
  if (isPanel(tile)) return { how: 'combed', rule: 'panel.both-faces' };
  if (isOver(longestEdge(tile), valueOf('set.long-edge', 'edge'))) return { how: 'combed', rule: 'set.long-edge' };
  if (area.exposure === 'submerged') return { how: 'combed', rule: 'coverage.submerged' };
  if (isOutdoor(area)) return setHabits[standards].outdoorBack;
  if (isOver(longestEdge(tile), valueOf('butter.size', 'edge'))) return { how: 'flat', rule: 'butter.size' };
  if (tile.reliefMm >= valueOf('butter.relief', 'depth')) return { how: 'flat', rule: 'butter.relief' };
  if (tile.material === 'glass') return { how: 'flat', rule: 'glass.mortar' };
  if (tile.material === 'stone' || tile.back === 'ribbed') return { how: 'flat', rule: 'butter.recommended' };
  return null;
}
