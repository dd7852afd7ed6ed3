import { mergeOrder, type Subject } from './order.ts';
import type { StandardSet } from './rule.ts';
import type { RuleId } from './rulebook.ts';
import { decidesIn } from './sets.ts';

/** One rule's say in a matter. */
export interface Requirement {
  rule: RuleId;
  /** Whether the rule speaks of this job at all. */
  applies: boolean;
  /** What it asks for, in the subject's unit. */
  value: number;
}

/** What became of a rule that was considered. */
export type Outcome = 'decides' | 'agrees' | 'less-strict' | 'does-not-apply' | 'other-standards' | 'overridden';

export interface Considered {
  rule: RuleId;
  value: number;
  outcome: Outcome;
}

export interface Decision {
  subject: Subject;
  value: number;
  rule: RuleId;
  trace: readonly Considered[];
}

/**
 * Merges what the rules ask for into one figure, by the declared order, and says what became of each.
 * @param requirements at least one that applies in the chosen set, or null is returned
 */
export function decide(
  subject: Subject,
  standards: StandardSet,
  requirements: readonly Requirement[],
): Decision | null {
  const sign = mergeOrder[subject].strictest === 'greatest' ? 1 : -1;
  let winner: Requirement | null = null;
  for (const one of requirements)
    if (one.applies && decidesIn(one.rule, standards) && (winner === null || sign * (one.value - winner.value) > 0))
      winner = one;
  if (winner === null) return null;
  const decided = winner;
  const outcomeOf = (one: Requirement): Outcome => {
    if (one === decided) return 'decides';
    if (!one.applies) return 'does-not-apply';
    if (!decidesIn(one.rule, standards)) return 'other-standards';
    return one.value === decided.value ? 'agrees' : 'less-strict';
  };
  return {
    subject,
    value: decided.value,
    rule: decided.rule,
    trace: requirements.map((one) => ({ rule: one.rule, value: one.value, outcome: outcomeOf(one) })),
  };
}

/** What the maker's written figure does to a decision: `stands` keeps ours, `raised` takes theirs. */
export interface MakerOutcome {
  decision: Decision;
  effect: 'raised' | 'agrees' | 'refused';
}

/**
 * Holds a maker's written figure against ours. It may be stricter; a laxer one is refused, and the caller must say so.
 * @param maker the rule under which a maker's instruction is quoted
 */
export function withMaker(decision: Decision, maker: RuleId, value: number): MakerOutcome {
  const sign = mergeOrder[decision.subject].strictest === 'greatest' ? 1 : -1;
  const difference = sign * (value - decision.value);
  if (difference === 0)
    return {
      effect: 'agrees',
      decision: { ...decision, trace: [...decision.trace, { rule: maker, value, outcome: 'agrees' }] },
    };
  if (difference < 0)
    return {
      effect: 'refused',
      decision: { ...decision, trace: [...decision.trace, { rule: maker, value, outcome: 'less-strict' }] },
    };
  return {
    effect: 'raised',
    decision: {
      subject: decision.subject,
      value,
      rule: maker,
      trace: [
        { rule: maker, value, outcome: 'decides' },
        ...decision.trace.map((one) => (one.outcome === 'decides' ? { ...one, outcome: 'overridden' as const } : one)),
      ],
    },
  };
}
