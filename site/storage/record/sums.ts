import type { OutcomeId } from '@lessons/outcomes.ts';

import type { Answer, Prediction } from './shape.ts';

/** Guesses of a share. */
export const shares = (predictions: Prediction[]): Prediction[] => predictions.filter((one) => one.of === 'share');

/** How many choices were foretold, and how many of them rightly. */
export const choices = (predictions: Prediction[]): { made: number; right: number } => {
  const made = predictions.filter((one) => one.of === 'choice');
  return { made: made.length, right: made.filter((one) => one.guess === one.truth).length };
};

/** How guessed shares lie to the truth, in points of a hundred: the mean and the middle distance; null without any. */
export function guessing(predictions: Prediction[]): { biasPoints: number; spreadPoints: number } | null {
  const guessed = shares(predictions);
  if (guessed.length === 0) return null;
  const apart = guessed.map((one) => (one.guess - one.truth) * 100);
  const distances = apart.map(Math.abs).sort((a, b) => a - b);
  return {
    biasPoints: apart.reduce((sum, one) => sum + one, 0) / apart.length,
    spreadPoints: distances[Math.floor((distances.length - 1) / 2)] ?? 0,
  };
}

export interface OutcomeSum {
  outcome: OutcomeId;
  asked: number;
  /** Mean of the last five answers, 0…1: what the learner can do now, not what they once could not. */
  points: number;
}

/** Each outcome that was asked, in the order of its first question. */
export function outcomeSums(answers: Answer[]): OutcomeSum[] {
  const byOutcome = new Map<OutcomeId, Answer[]>();
  for (const answer of [...answers].sort((a, b) => a.at - b.at))
    byOutcome.set(answer.outcome, [...(byOutcome.get(answer.outcome) ?? []), answer]);
  return [...byOutcome].map(([outcome, list]) => {
    const lately = list.slice(-5);
    return {
      outcome,
      asked: list.length,
      points: lately.reduce((sum, one) => sum + one.points, 0) / lately.length,
    };
  });
}
