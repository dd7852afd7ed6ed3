import { decide, type Decision } from '../rules/decide.ts';
import { valueOf } from '../rules/rulebook.ts';
import type { StandardSet } from '../rules/rule.ts';
import type { Area } from './job-types.ts';
import { isOutdoor } from './tile-facts.ts';

/** How far apart movement joints stand, mm; the decision is over the wider figure of each rule. */
export function movementJoints(
  area: Area,
  standards: StandardSet,
): { leastMm: number; mostMm: number; decision: Decision } {
  const outdoor = isOutdoor(area) || area.sun;
  const floor = area.surface === 'floor';
  const rules = [
    ['movement.interior', !outdoor],
    ['movement.exterior', outdoor],
    ['movement.uk-floor', floor && !outdoor],
    ['movement.uk-wall', !floor],
    ['movement.uk-exterior', outdoor],
  ] as const;
  const decision = decide(
    'movement',
    standards,
    rules.map(([rule, applies]) => ({ rule, applies, value: valueOf(rule, 'most') })),
  );
  if (!decision) throw new Error(`No movement joint rule for ${standards}.`);
  const rule = decision.rule as (typeof rules)[number][0];
  return { leastMm: valueOf(rule, 'least'), mostMm: decision.value, decision };
}
