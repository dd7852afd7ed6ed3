import type { TrowelSetup } from '../../simulations/bed/types.ts';

/** "If in doubt, take the bigger notch": reaches for the most mortar whatever the joint, the tile and the floor say. */
export const biggerIsSafer = {
  id: 'bigger-is-safer',
  /** Picks the notch with the largest opening. */
  picks: <T extends TrowelSetup>(trowels: readonly T[]): T =>
    trowels.reduce((best, one) => (one.widthMm * one.depthMm > best.widthMm * best.depthMm ? one : best)),
  /** How much mortar it leaves, as its holder sees it: the size of the opening, mm². */
  opening: (trowel: TrowelSetup): number => trowel.widthMm * trowel.depthMm,
  /** Would a bigger notch put it right? Always. */
  curesIt: (): boolean => true,
} as const;
