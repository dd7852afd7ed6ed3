import { type IdeaId, IDEAS } from '../wrong-ideas/idea.ts';
import type { Decision } from './item.ts';
import type { Observation } from './observe.ts';

/**
 * What we believe about a learner: a probability for every set of at most three wrong ideas held. Sets are bit masks over
 * `IDEAS`; 1,351 of them for twenty ideas, so everything below is exact and quick.
 */
export interface Beliefs {
  sets: readonly number[];
  chance: Float64Array;
}

/**
 * The response model. A holder of an idea that a decision offers gives the idea's answer, but for a slip; anyone else
 * gives the right answer, but for a slip; a slip lands on the other answers alike. Chosen, not measured: a class's own
 * records would set them better.
 */
export const RESPONSE = {
  /** Chance that an idea is held before anything was asked. */
  prior: 0.08,
  slip: 0.1,
  /** An idea counts as held above this. */
  sure: 0.8,
  /** And as not held below this. */
  cleared: 0.01,
} as const;

const MOST_HELD = 3;
const bitOf = new Map<IdeaId, number>(IDEAS.map((idea, at) => [idea, 1 << at]));
const sizeOf = (set: number): number => {
  let count = 0;
  for (let rest = set; rest !== 0; rest &= rest - 1) count++;
  return count;
};

function setsUpTo(most: number): number[] {
  let layer = [0];
  const all = [0];
  for (let size = 1; size <= most; size++) {
    layer = layer.flatMap((set) => IDEAS.flatMap((_, at) => (1 << at > set ? [set | (1 << at)] : [])));
    all.push(...layer);
  }
  return all;
}
const SETS: readonly number[] = setsUpTo(MOST_HELD);

function normalised(chance: Float64Array): Float64Array {
  let sum = 0;
  for (const one of chance) sum += one;
  return chance.map((one) => one / sum);
}

/** Before the first answer: each idea held with the prior chance, independently. */
export function openBeliefs(): Beliefs {
  const odds = RESPONSE.prior / (1 - RESPONSE.prior);
  const chance = Float64Array.from(SETS, (set) => {
    let weight = 1;
    for (let held = 0; held < sizeOf(set); held++) weight *= odds;
    return weight;
  });
  return { sets: SETS, chance: normalised(chance) };
}

const maskOf = (ideas: readonly IdeaId[]): number => ideas.reduce((mask, idea) => mask | (bitOf.get(idea) ?? 0), 0);

/** The outcomes of a decision: right, each idea it offers, and (where there are any) wrong answers that show nothing. */
export function outcomesOf(decision: Decision): Observation[] {
  const ideas = [...new Set(Object.values(decision.ideas))];
  return ['right', ...ideas.map((idea) => ({ idea })), ...(decision.others > 0 ? (['other'] as const) : [])];
}

/** Chance of an outcome for a learner who holds exactly the ideas in `held` of those the decision offers. */
export function chanceOf(outcome: Observation, decision: Decision, held: number): number {
  const answers = Object.values(decision.ideas);
  const wrongs = answers.length + decision.others;
  const drawn = answers.filter((idea) => (bitOf.get(idea) ?? 0) & held).length;
  const weight = (count: number): number => (wrongs === 0 ? 0 : count / wrongs);
  if (drawn === 0) {
    if (outcome === 'right') return wrongs === 0 ? 1 : 1 - RESPONSE.slip;
    if (outcome === 'other') return RESPONSE.slip * weight(decision.others);
    return RESPONSE.slip * weight(answers.filter((idea) => idea === outcome.idea).length);
  }
  // A holder: the answers of the ideas held share 1 − slip, all the rest (the right one too) share the slip.
  const rest = wrongs + 1 - drawn;
  if (outcome === 'right') return RESPONSE.slip / rest;
  if (outcome === 'other') return (RESPONSE.slip * decision.others) / rest;
  const count = answers.filter((idea) => idea === outcome.idea).length;
  const isHeld = ((bitOf.get(outcome.idea) ?? 0) & held) !== 0;
  return isHeld ? ((1 - RESPONSE.slip) * count) / drawn : (RESPONSE.slip * count) / rest;
}

/** Bayes' rule for one decision. */
export function learn(beliefs: Beliefs, decision: Decision, seen: Observation): Beliefs {
  const offered = maskOf(Object.values(decision.ideas));
  if (offered === 0) return beliefs;
  const chance = beliefs.chance.map(
    (before, at) => before * chanceOf(seen, decision, (beliefs.sets[at] ?? 0) & offered),
  );
  return { sets: beliefs.sets, chance: normalised(chance) };
}

/** Sets that agree on what a decision offers answer alike, so they count as one. */
function groupsOf({ sets, chance }: Beliefs, offered: number): { group: number; weight: number }[] {
  const places = IDEAS.flatMap((_, at) => (offered & (1 << at) ? [at] : []));
  const weights = new Float64Array(1 << places.length);
  for (let at = 0; at < sets.length; at++) {
    const set = sets[at] ?? 0;
    let packed = 0;
    for (let n = 0; n < places.length; n++) packed |= ((set >> (places[n] ?? 0)) & 1) << n;
    weights[packed] = (weights[packed] ?? 0) + (chance[at] ?? 0);
  }
  return [...weights].flatMap((weight, packed) =>
    weight > 0 ? [{ group: places.reduce((mask, place, n) => mask | (((packed >> n) & 1) << place), 0), weight }] : [],
  );
}

/** Bits that a decision is expected to tell about which ideas are held. */
export function expectedBits(beliefs: Beliefs, decision: Decision): number {
  const offered = maskOf(Object.values(decision.ideas));
  if (offered === 0) return 0;
  const groups = groupsOf(beliefs, offered);
  let bits = 0;
  for (const outcome of outcomesOf(decision)) {
    const cases = groups.map(({ group, weight }) => ({ weight, chance: chanceOf(outcome, decision, group) }));
    const overall = cases.reduce((sum, { weight, chance }) => sum + weight * chance, 0);
    for (const { weight, chance } of cases)
      if (chance > 0 && overall > 0) bits += weight * chance * Math.log2(chance / overall);
  }
  return bits;
}

/** Chance that each idea is held. */
export function heldChance(beliefs: Beliefs): Record<IdeaId, number> {
  const sums = IDEAS.map(() => 0);
  beliefs.sets.forEach((set, place) => {
    const chance = beliefs.chance[place] ?? 0;
    for (let at = 0; at < IDEAS.length; at++) if (set & (1 << at)) sums[at] = (sums[at] ?? 0) + chance;
  });
  return Object.fromEntries(IDEAS.map((idea, at) => [idea, sums[at] ?? 0])) as Record<IdeaId, number>;
}

/** The ideas we are sure are held. */
export function namedIdeas(beliefs: Beliefs): IdeaId[] {
  const held = heldChance(beliefs);
  return IDEAS.filter((idea) => held[idea] >= RESPONSE.sure);
}

/** True when every idea is surely held or surely not. */
export const isSettled = (beliefs: Beliefs): boolean =>
  Object.values(heldChance(beliefs)).every((held) => held >= RESPONSE.sure || held <= RESPONSE.cleared);
