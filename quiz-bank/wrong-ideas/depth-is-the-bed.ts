import type { TrowelSetup } from '../../simulations/bed/types.ts';

/** "A 1/4 notch leaves a 1/4 bed": forgets the teeth and the angle of the blade. */
export const depthIsTheBed = {
  id: 'depth-is-the-bed',
  /** Mean bed in mm as its holder sees it: the depth on the label. */
  bedMm: (trowel: TrowelSetup): number => trowel.depthMm,
  /** Ranks notches by depth alone, least first. */
  ranks: <T extends TrowelSetup>(trowels: readonly T[]): T[] => [...trowels].sort((a, b) => a.depthMm - b.depthMm),
} as const;
