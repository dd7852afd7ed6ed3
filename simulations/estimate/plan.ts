import { valueOf } from '../rules/rulebook.ts';
import { setHabits } from '../rules/sets.ts';
import type { UnitSystem } from '../units/format.ts';
import { jobCautions } from './cautions.ts';
import type { Assumed, Job } from './job-types.ts';
import { planArea } from './plan-area.ts';
import type { Finding, Plan, PlanOptions } from './plan-types.ts';
import { finding, ruleFinding, speakerFor, valueIn } from './say-finding.ts';
import { words } from './words/en.ts';

const FIRST_SEED = 1;
/** The fewest draws a spread is worth. */
const LEAST_DRAWS = 200;

/** Bags of all areas together: whole bags for the job, not for each area. */
function totalBags(plans: Plan['areas'], job: Job): Plan['bags'] {
  const sum = (name: 'low' | 'plan' | 'high'): number =>
    Math.ceil(plans.reduce((all, area) => all + area.bags.exact[name], 0) - 1e-6);
  const planned = sum('plan');
  const { priceEach, bagKg } = job.mortar;
  return {
    low: sum('low'),
    plan: planned,
    high: sum('high'),
    labelWouldSay: plans.reduce((all, area) => all + area.bags.labelWouldSay, 0),
    cost: priceEach === null ? null : planned * priceEach,
    massKg: planned * bagKg,
  };
}

function bagFindings(bags: Plan['bags'], job: Job, units: UnitSystem): Finding[] {
  const have = job.mortar.bagsAtHand;
  const short = have !== null && have < bags.low;
  const say = speakerFor(units);
  return [
    ...(short
      ? [
          finding(
            'bags.spread',
            'stop',
            say(words.bagsShort, { have: valueIn(have, 'count'), low: valueIn(bags.low, 'count') }),
          ),
        ]
      : []),
    ruleFinding('bags.round-up', 'note', units),
    ruleFinding('bags.spread', 'note', units),
    ruleFinding('mortar.part-bag', 'note', units),
    ruleFinding('time.slake', 'note', units),
    ruleFinding('time.mix-speed', 'note', units),
    ruleFinding('time.no-retemper', 'note', units),
  ];
}

/**
 * The job sheet: what to take, how to set, what to reach and check, how much to buy, and why.
 * @param job as `readJob` returns it @param assumed the defaults it took, repeated in the plan
 */
export function planJob(job: Job, options: PlanOptions = {}, assumed: Assumed = {}): Plan {
  const units = options.units ?? setHabits[job.standards].units;
  const say = speakerFor(units);
  const draws = Math.max(LEAST_DRAWS, options.draws ?? valueOf('model.draws', 'draws'));
  const { seed = FIRST_SEED, onProgress } = options;
  const areas = job.areas.map((area, n) => {
    const onArea = onProgress && { onProgress: (share: number) => onProgress((n + share) / job.areas.length) };
    return planArea(area, { job, say, units, spread: { seed, draws, ...onArea } });
  });
  const bags = totalBags(areas, job);
  return {
    standards: job.standards,
    units,
    areas,
    bags,
    findings: [...bagFindings(bags, job, units), ...jobCautions(job, say, units)],
    assumed,
  };
}
