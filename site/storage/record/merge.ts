import { keyOf, type LearnerRecord, type ModuleEntry, type ReviewCard } from './shape.ts';

/** A finished module stays finished; else the later word counts. */
const laterModule = (a: ModuleEntry, b: ModuleEntry): ModuleEntry =>
  a.state === b.state ? (a.at >= b.at ? a : b) : a.state === 'done' ? a : b;

/** The card that was looked at last knows more. */
const laterCard = (a: ReviewCard, b: ReviewCard): ReviewCard => ((a.lastReview ?? 0) >= (b.lastReview ?? 0) ? a : b);

function union<T>(one: T[], other: T[], key: (entry: T) => string, pick: (a: T, b: T) => T): T[] {
  const byKey = new Map<string, T>();
  for (const entry of [...one, ...other]) {
    const held = byKey.get(key(entry));
    byKey.set(key(entry), held === undefined ? entry : pick(held, entry));
  }
  return [...byKey.values()];
}

/**
 * Two records of one learner made into one: nothing is lost from either, and merging twice changes nothing.
 * Predictions and answers are facts with a name each, so one copy of each stays.
 */
export const mergeRecords = (one: LearnerRecord, other: LearnerRecord): LearnerRecord => ({
  modules: union(one.modules, other.modules, keyOf.modules, laterModule),
  predictions: union(one.predictions, other.predictions, keyOf.predictions, (a) => a),
  answers: union(one.answers, other.answers, keyOf.answers, (a) => a),
  cards: union(one.cards, other.cards, keyOf.cards, laterCard),
});
