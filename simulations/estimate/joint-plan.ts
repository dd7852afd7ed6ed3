import type { Decision } from '../rules/decide.ts';
import { ruleById, valueOf } from '../rules/rulebook.ts';
import { sayRule } from '../rules/say.ts';
import type { UnitSystem } from '../units/format.ts';
import type { StandardSet } from '../rules/rule.ts';
import { decidesIn } from '../rules/sets.ts';
import type { Area } from './job-types.ts';
import {
  bowToExpect,
  expectedLippage,
  isJointFrom,
  jointLimit,
  lippageLimit,
  offsetLimit,
  offsetOf,
} from './joint-limits.ts';
import type { AreaPlan, Finding } from './plan-types.ts';
import { finding, lengthValue, type Speaker, valueIn } from './say-finding.ts';
import { longestEdge } from './tile-facts.ts';
import { words } from './words/en.ts';

/** Nobody sees a hundredth. */
const HAIR_MM = 0.01;
const HAIR_SHARE = 0.002;

export interface JointPlan extends Pick<
  AreaPlan,
  'minJointMm' | 'maxOffsetShare' | 'maxLippageMm' | 'expectedLippageMm'
> {
  decisions: Decision[];
  findings: Finding[];
}

/** Joint, offset and lippage of an area. */
export function planJoints(area: Area, standards: StandardSet, say: Speaker, units: UnitSystem): JointPlan {
  const joint = jointLimit(area, standards);
  const offset = offsetLimit(area, standards);
  const lippage = lippageLimit(area, standards);
  const expected = expectedLippage(area, standards);
  const findings: Finding[] = [];
  if (joint && !isJointFrom(area.jointMm, joint.value))
    findings.push(
      finding(
        joint.rule,
        'stop',
        say(words.jointTooNarrow, { joint: lengthValue(area.jointMm), least: lengthValue(joint.value) }),
      ),
    );
  const unmeasured = area.tile.measuredBowMm === null;
  if (joint?.rule === 'joint.running-bond' && unmeasured)
    findings.push(
      finding(
        'joint.running-bond',
        'warn',
        say(words.jointMeasure, { warp: lengthValue(bowToExpect(area, standards), 'gap') }),
      ),
    );
  const used = offsetOf(area);
  if (offset.decision && used > offset.share + HAIR_SHARE)
    findings.push(
      finding(
        offset.decision.rule,
        'stop',
        say(words.offsetTooMuch, {
          offset: valueIn(used, 'share'),
          most: valueIn(offset.share, 'share'),
          length: lengthValue(offset.share * longestEdge(area.tile)),
        }),
      ),
    );
  if (lippage && expected > lippage.value + HAIR_MM)
    findings.push(
      finding(
        lippage.rule,
        'warn',
        say(words.lippageOver, {
          expected: lengthValue(expected, 'gap'),
          most: lengthValue(lippage.value, 'gap'),
        }),
      ),
    );
  if (used > 0) findings.push(finding('lippage.bow', 'note', sayRule(ruleById('lippage.bow'), units)));
  if (unmeasured && used > 0) findings.push(finding('lippage.actual', 'note', say(words.lippageUnmeasured)));
  const edge = valueOf('lippage.wide', 'from');
  if (decidesIn('lippage.wide', standards) && Math.abs(area.jointMm - edge) < 0.1)
    findings.push(
      finding(
        'lippage.wide',
        'note',
        say(words.lippageBoundary, {
          joint: lengthValue(edge),
          narrow: lengthValue(valueOf('lippage.narrow', 'lip')),
          wide: lengthValue(valueOf('lippage.wide', 'lip')),
        }),
      ),
    );
  return {
    minJointMm: joint?.value ?? 0,
    maxOffsetShare: offset.share,
    maxLippageMm: lippage?.value ?? 0,
    expectedLippageMm: expected,
    decisions: [joint, offset.decision, lippage].filter((one) => one !== null),
    findings,
  };
}
