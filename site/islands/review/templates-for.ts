import { bank } from '@quiz/bank.ts';
import type { OutcomeId } from '@lessons/outcomes.ts';

/** A template for each outcome, another on every visit; outcomes that nothing examines yet come back apart. */
export function templatesFor(
  outcomes: readonly OutcomeId[],
  seed: number,
): { templates: string[]; unasked: OutcomeId[] } {
  const templates: string[] = [];
  const unasked: OutcomeId[] = [];
  outcomes.forEach((outcome, place) => {
    const main = bank.templates.filter((one) => one.outcomes[0] === outcome);
    const fitting = main.length > 0 ? main : bank.templates.filter((one) => one.outcomes.includes(outcome));
    const fresh = fitting.filter((one) => !templates.includes(one.id));
    const pick = (fresh.length > 0 ? fresh : fitting)[(seed + place) % Math.max(1, fresh.length || fitting.length)];
    if (pick) templates.push(pick.id);
    else unasked.push(outcome);
  });
  return { templates, unasked };
}
