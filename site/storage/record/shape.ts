import type { ModuleSlug } from '@lessons/course.ts';
import type { OutcomeId } from '@lessons/outcomes.ts';

/** The learner's record: what was read, foretold, answered, and when each outcome is due again. Times are ms since 1970. */
export const RECORD_VERSION = 1;

export interface ModuleEntry {
  slug: ModuleSlug;
  state: 'begun' | 'done';
  at: number;
}

/**
 * What was foretold before the tile was pulled, and what came of it. A share: both are 0…1. A choice: the guess is 1 when
 * it was right and 0 when it was not, and the truth is 1.
 */
export interface Prediction {
  id: string;
  module: ModuleSlug;
  figure: string;
  of: 'share' | 'choice';
  guess: number;
  truth: number;
  at: number;
}

/** One marked question. `points` is the share of its decisions that were right, 0…1. */
export interface Answer {
  id: string;
  module: ModuleSlug;
  outcome: OutcomeId;
  template: string;
  seed: number;
  slot: number;
  points: number;
  /** Wrong ideas that the answer showed. */
  ideas: string[];
  from: 'check' | 'review' | 'round';
  at: number;
}

/** When an outcome comes back: the scheduler's own figures. */
export interface ReviewCard {
  outcome: OutcomeId;
  due: number;
  stability: number;
  difficulty: number;
  scheduledDays: number;
  learningSteps: number;
  reps: number;
  lapses: number;
  state: number;
  lastReview: number | null;
}

export interface LearnerRecord {
  modules: ModuleEntry[];
  predictions: Prediction[];
  answers: Answer[];
  cards: ReviewCard[];
}

export const emptyRecord = (): LearnerRecord => ({ modules: [], predictions: [], answers: [], cards: [] });

export type RecordStore = keyof LearnerRecord;

/** What names an entry of each store: two entries with one key are the same entry. */
export const keyOf = {
  modules: (entry: ModuleEntry): string => entry.slug,
  predictions: (entry: Prediction): string => entry.id,
  answers: (entry: Answer): string => entry.id,
  cards: (entry: ReviewCard): string => entry.outcome,
} as const;
