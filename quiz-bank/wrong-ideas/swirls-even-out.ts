import type { CombPattern } from '../../simulations/bed/types.ts';

/** "Swirl it, it spreads better": thinks that curved ridges even out when the tile goes down. */
export const swirlsEvenOut = {
  id: 'swirls-even-out',
  /** Ranks combs from worst to best as its holder would. */
  ranks: <T extends { pattern: CombPattern }>(combs: readonly T[]): T[] => {
    const curls: Record<CombPattern, number> = {
      flat: 0,
      straight: 1,
      wobble: 2,
      drawn: 2,
      crossed: 3,
      fan: 4,
      swirl: 5,
    };
    return [...combs].sort((a, b) => curls[a.pattern] - curls[b.pattern]);
  },
} as const;
