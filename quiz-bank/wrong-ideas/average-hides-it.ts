/** "It averages out": looks at the mean and not at where the void is or which tile missed. */
export const averageHidesIt = {
  id: 'average-hides-it',
  mean: (shares: readonly number[]): number => shares.reduce((sum, one) => sum + one, 0) / shares.length,
  /** Passes when the mean does. */
  passes: (shares: readonly number[], required: number): boolean =>
    shares.reduce((sum, one) => sum + one, 0) / shares.length >= required,
} as const;
