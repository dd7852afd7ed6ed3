import type { UnitSystem } from '../../simulations/units/format.ts';
import type { ModuleId } from '../modules.ts';
import { readAnswer } from './answer.ts';
import { type Beliefs, expectedBits, heldChance, isSettled, learn, openBeliefs } from './beliefs.ts';
import { type Bank, compose } from './compose.ts';
import { drawFrom } from './draw.ts';
import type { KeyedItem } from './item.ts';
import { observe } from './observe.ts';
import type { IdeaId } from '../wrong-ideas/idea.ts';

export interface DiagnosisPlan {
  seed: number;
  most: number;
  modules: readonly ModuleId[];
  units: UnitSystem;
}

/** A diagnosing round as far as it has come. */
export interface Diagnosis {
  asked: KeyedItem[];
  beliefs: Beliefs;
  /** The next question, or null when the round knows enough or has reached its length. */
  next: KeyedItem | null;
}

/** How near the best an item must come to be drawn; it keeps two rounds from opening alike. */
const NEAR_BEST = 0.98;
/** A template seen twice in a round is spent. */
const MOST_TURNS = 2;
/** Below this many bits a question tells nothing worth a learner's minute. */
const LEAST_BITS = 0.002;
/** A round that found nothing to ask about still asks this many. */
const LEAST_ITEMS = 4;

const bitsOf = (beliefs: Beliefs, { key }: KeyedItem): number =>
  // Decisions of one item are taken as independent: an upper bound, good enough to rank by.
  key.decisions.reduce((sum, decision) => sum + expectedBits(beliefs, decision), 0);

/** Bits of doubt about one idea. */
const doubt = (held: number): number =>
  held <= 0 || held >= 1 ? 0 : -held * Math.log2(held) - (1 - held) * Math.log2(1 - held);

/** Only so many templates are weighed at a step, each by one draw: those whose ideas are most in doubt. */
const WEIGHED = 90;
/** So many of them are drawn again, since one draw may offer other ideas than the next. */
const DRAWN_AGAIN = 14;
/** Draws of each of those that are weighed. */
const DRAWS = 8;
/** Seeds of those draws stand so far apart that rounds of neighbouring numbers don't share them. */
const DRAW_STEP = 7919;

function nextItem(bank: Bank, plan: DiagnosisPlan, beliefs: Beliefs, asked: KeyedItem[]): KeyedItem | null {
  const slot = asked.length;
  if (slot >= plan.most || (slot >= LEAST_ITEMS && isSettled(beliefs))) return null;
  const turns = (id: string): number => asked.filter(({ item }) => item.ref.template === id).length;
  const held = heldChance(beliefs);
  const doubtOf = (ideas: readonly IdeaId[]): number => ideas.reduce((sum, idea) => sum + doubt(held[idea]), 0);
  const weigh = (id: string, draw: number): { id: string; keyed: KeyedItem; bits: number } => {
    const keyed = compose(bank, { template: id, seed: plan.seed + draw * DRAW_STEP, slot }, plan.units);
    // A question already asked in another dress tells the same slip again; count it for less.
    return { id, keyed, bits: bitsOf(beliefs, keyed) * (turns(id) > 0 ? 0.8 : 1) };
  };
  const first = bank.templates
    .filter(({ ideas }) => ideas.length > 0)
    .filter(({ id, module }) => (plan.modules.length === 0 || plan.modules.includes(module)) && turns(id) < MOST_TURNS)
    .filter(({ id }) => asked.at(-1)?.item.ref.template !== id)
    .toSorted((a, b) => doubtOf(b.ideas) - doubtOf(a.ideas))
    .slice(0, WEIGHED)
    .map(({ id }) => weigh(id, 0))
    .toSorted((a, b) => b.bits - a.bits);
  const again = first
    .slice(0, DRAWN_AGAIN)
    .flatMap(({ id }) => Array.from({ length: DRAWS - 1 }, (_, n) => weigh(id, n + 1)));
  const candidates = [...first, ...again];
  const best = Math.max(0, ...candidates.map(({ bits }) => bits));
  if (best < LEAST_BITS) return null;
  const near = candidates.filter(({ bits }) => bits >= NEAR_BEST * best);
  return near.length === 0 ? null : drawFrom(bank.version, 'next', plan.seed, slot).pick(near).keyed;
}

export function openDiagnosis(bank: Bank, plan: DiagnosisPlan): Diagnosis {
  const beliefs = openBeliefs();
  return { asked: [], beliefs, next: nextItem(bank, plan, beliefs, []) };
}

/** Takes the answer to the open question and picks the next. An answer that can't be read teaches nothing. */
export function answerDiagnosis(bank: Bank, plan: DiagnosisPlan, now: Diagnosis, answer: string): Diagnosis {
  if (!now.next) return now;
  const { key, item } = now.next;
  const reading = readAnswer(item, answer);
  const seen = reading.ok ? observe(key, reading.given) : [];
  const beliefs = seen.reduce((held, one, at) => {
    const decision = key.decisions[at];
    return decision ? learn(held, decision, one) : held;
  }, now.beliefs);
  const asked = [...now.asked, now.next];
  return { asked, beliefs, next: nextItem(bank, plan, beliefs, asked) };
}

/** Plays a diagnosing round again from its answers, as marking does. */
export function replayDiagnosis(bank: Bank, plan: DiagnosisPlan, answers: readonly string[]): Diagnosis {
  return answers.reduce((now, answer) => answerDiagnosis(bank, plan, now, answer), openDiagnosis(bank, plan));
}
