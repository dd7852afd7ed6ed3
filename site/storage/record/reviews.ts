import { createEmptyCard, fsrs, Rating, type Card, type Grade } from 'ts-fsrs';

import type { OutcomeId } from '@lessons/outcomes.ts';

import type { ReviewCard } from './shape.ts';

/** Without the library's random spread, so that the same answers give the same days. */
const scheduler = fsrs({ enable_fuzz: false });

/** Points as the scheduler's grades: all right, partly, wrong. */
const gradeOf = (points: number): Grade => (points >= 0.999 ? Rating.Good : points >= 0.5 ? Rating.Hard : Rating.Again);

const fromCard = (outcome: OutcomeId, card: Card): ReviewCard => ({
  outcome,
  due: card.due.getTime(),
  stability: card.stability,
  difficulty: card.difficulty,
  scheduledDays: card.scheduled_days,
  learningSteps: card.learning_steps,
  reps: card.reps,
  lapses: card.lapses,
  state: card.state,
  lastReview: card.last_review?.getTime() ?? null,
});

/** @param at now: a card looked at later than that was dated by a clock that has since been put right */
const toCard = (held: ReviewCard, at: number): Card => ({
  due: new Date(held.due),
  stability: held.stability,
  difficulty: held.difficulty,
  elapsed_days: 0,
  scheduled_days: held.scheduledDays,
  learning_steps: held.learningSteps,
  reps: held.reps,
  lapses: held.lapses,
  state: held.state,
  ...(held.lastReview === null ? {} : { last_review: new Date(Math.min(held.lastReview, at)) }),
});

/** A card for an outcome met for the first time: due at once. */
export const newCard = (outcome: OutcomeId, at: number): ReviewCard => fromCard(outcome, createEmptyCard(new Date(at)));

/** The card after an answer worth `points` (0…1) at time `at`; the better the answer, the later it comes back. */
export const reviewed = (card: ReviewCard, points: number, at: number): ReviewCard =>
  fromCard(card.outcome, scheduler.next(toCard(card, at), new Date(at), gradeOf(points)).card);
