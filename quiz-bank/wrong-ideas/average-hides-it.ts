/** "It averages out": looks at the mean and not at where the void is or which tile missed. */
export const averageHidesIt = {
  id: 'average-hides-it',
  mean: (shares: readonly number[]): number => shares.reduce((sum, one) => sum + one, 0) / shares.length,
  /** Water that scattered voids can hold, litres: they are too small to matter. */
  waterL: (): number => 0,
  /** Share of a mortar's rated strength that a partly bonded tile has: all of it, the mortar is the same. */
  strength: (): number => 1,
  /** Passes when the mean does. */
  passes: (shares: readonly number[], required: number): boolean =>
    shares.reduce((sum, one) => sum + one, 0) / shares.length >= required,
} as const;
