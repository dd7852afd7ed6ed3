import type { Decision } from '../rules/decide.ts';
import { ruleById } from '../rules/rulebook.ts';
import type { UnitSystem } from '../units/format.ts';
import type { ExplainedDecision } from './plan-types.ts';
import { saySubject, speakerFor } from './say-finding.ts';
import { words } from './words/en.ts';

/** Puts a sentence to every rule that was considered. */
export function explain(decision: Decision, units: UnitSystem): ExplainedDecision {
  const say = speakerFor(units);
  return {
    ...decision,
    trace: decision.trace.map((one) => ({
      ...one,
      says: say(words.outcomes[one.outcome], {
        rule: ruleById(one.rule).title,
        value: saySubject(decision.subject, one.value, units),
      }),
    })),
  };
}
