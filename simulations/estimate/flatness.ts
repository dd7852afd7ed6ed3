import { decide, type Decision } from '../rules/decide.ts';
import { ruleById, type RuleId, valueOf } from '../rules/rulebook.ts';
import type { StandardSet } from '../rules/rule.ts';
import type { Area } from './job-types.ts';
import { isFrom, isMosaic, isPanel, longestEdge } from './tile-facts.ts';

/** A limit: at most `dipMm` under a straightedge `overMm` long, and a short-range limit where the standard has one. */
export interface FlatnessLimit {
  dipMm: number;
  overMm: number;
  shortDipMm: number | null;
  shortOverMm: number | null;
}

const limits: Partial<Record<RuleId, () => FlatnessLimit>> = {
  'flatness.large': () => pair('flatness.large'),
  'flatness.small': () => pair('flatness.small'),
  'flatness.uk': () => single('flatness.uk'),
  'flatness.uk-floor': () => single('flatness.uk-floor'),
};
const pair = (rule: 'flatness.large' | 'flatness.small'): FlatnessLimit => ({
  dipMm: valueOf(rule, 'long'),
  overMm: valueOf(rule, 'longOver'),
  shortDipMm: valueOf(rule, 'short'),
  shortOverMm: valueOf(rule, 'shortOver'),
});
const single = (rule: 'flatness.uk' | 'flatness.uk-floor'): FlatnessLimit => ({
  dipMm: valueOf(rule, 'dip'),
  overMm: valueOf(rule, 'over'),
  shortDipMm: null,
  shortOverMm: null,
});

/** Dip that a limit allows under another length of straightedge, mm: in proportion, between the pair where there is one. */
export function dipAllowed(limit: FlatnessLimit, overMm: number): number {
  const { dipMm, shortDipMm, shortOverMm } = limit;
  if (shortDipMm === null || shortOverMm === null) return (dipMm * overMm) / limit.overMm;
  if (overMm <= shortOverMm) return (shortDipMm * overMm) / shortOverMm;
  if (overMm >= limit.overMm) return (dipMm * overMm) / limit.overMm;
  return shortDipMm + ((dipMm - shortDipMm) * (overMm - shortOverMm)) / (limit.overMm - shortOverMm);
}

/** Which flatness the floor or wall is brought to; figures are compared under the length the job was measured with. */
export function flatnessToReach(area: Area, standards: StandardSet): { decision: Decision; limit: FlatnessLimit } {
  const large =
    (!isMosaic(area.tile) && isFrom(longestEdge(area.tile), valueOf('flatness.large', 'edge'))) || isPanel(area.tile);
  const applies: Partial<Record<RuleId, boolean>> = {
    'flatness.large': large,
    'flatness.small': !large,
    'flatness.uk': true,
    'flatness.uk-floor': area.surface === 'floor',
  };
  const decision = decide(
    'flatness',
    standards,
    Object.entries(limits).map(([rule, limit]) => ({
      rule: rule as RuleId,
      applies: applies[rule as RuleId] ?? false,
      value: dipAllowed(limit(), area.flatnessOverMm),
    })),
  );
  const limit = decision && limits[decision.rule]?.();
  if (!limit) throw new Error(`No flatness rule for ${standards}.`);
  return { decision, limit };
}

/** DIN 18202 table 3: the dip allowed under a length, by straight lines between the printed points. mm */
export function dinDip(row: 'flatness.din-3' | 'flatness.din-4' | 'flatness.din-6' | 'flatness.din-7', overMm: number) {
  const { values } = ruleById(row);
  const points = [
    [100, values.at01.value],
    [1000, values.at1.value],
    [4000, values.at4.value],
    [10000, values.at10.value],
    [15000, values.at15.value],
  ] as const;
  let [spanBefore, dipBefore] = points[0] as readonly [number, number];
  for (const [reach, dip] of points) {
    if (overMm <= reach)
      return reach === spanBefore
        ? dip
        : dipBefore + ((dip - dipBefore) * (overMm - spanBefore)) / (reach - spanBefore);
    [spanBefore, dipBefore] = [reach, dip];
  }
  return dipBefore;
}
