/** One tile judged by eye, shares 0…1. */
export interface Guess {
  guess: number;
  truth: number;
}

export interface EyeScore {
  judged: number;
  /** Mean of guess less truth over the last ten, in points; above nought is too hopeful. Null before the first. */
  bias: number | null;
  /** Standard deviation of the same, in points; null before the second. */
  spread: number | null;
  /** How many of the last ten came within five points. */
  within: number;
  of: number;
}

/** The aim that learners are shown: within five points, nine times in ten. */
export const EYE_AIM = { points: 5, within: 9, of: 10 } as const;

export const errorPoints = ({ guess, truth }: Guess): number => (guess - truth) * 100;

/** Bias, spread and hits over the last ten guesses. */
export function scoreGuesses(guesses: readonly Guess[]): EyeScore {
  const last = guesses.slice(-EYE_AIM.of).map(errorPoints);
  const mean = last.reduce((sum, one) => sum + one, 0) / Math.max(1, last.length);
  const squares = last.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  return {
    judged: guesses.length,
    bias: last.length === 0 ? null : mean,
    spread: last.length < 2 ? null : Math.sqrt(squares / (last.length - 1)),
    // A guess of 80 on a truth of 85.0 is within five, whatever the binary form of the numbers.
    within: last.filter((one) => Math.abs(one) <= EYE_AIM.points + 1e-9).length,
    of: last.length,
  };
}

/** True once the last ten meet the aim. */
export const aimMet = ({ within, of }: EyeScore): boolean => of >= EYE_AIM.of && within >= EYE_AIM.within;
