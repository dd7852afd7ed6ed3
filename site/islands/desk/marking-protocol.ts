import type { ModuleId } from '@quiz/modules.ts';
import type { IdeaCount, LearnerMarks, OutcomeMarks } from '@quiz/records/mark-class.ts';
import type { ClassStatistics } from '@quiz/records/statistics.ts';

/** To the marking worker: the round and the hand-ins as lines; they are read again there. */
export interface MarkingRequest {
  readonly run: number;
  readonly round: string;
  readonly lines: readonly string[];
}

/** A question of the round as the class table names it. */
export interface AskedItem {
  readonly template: string;
  readonly module: ModuleId;
  readonly ask: string;
}

export interface ClassMarks {
  readonly learners: readonly LearnerMarks[];
  readonly items: readonly AskedItem[];
  readonly outcomes: readonly OutcomeMarks[];
  readonly ideas: readonly IdeaCount[];
  readonly statistics: ClassStatistics;
}

export type MarkingReply =
  | { readonly kind: 'progress'; readonly run: number; readonly share: number }
  | { readonly kind: 'marks'; readonly run: number; readonly marks: ClassMarks }
  | { readonly kind: 'failed'; readonly run: number; readonly message: string };
