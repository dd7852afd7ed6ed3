import type { TrowelSetup } from '../../simulations/bed/types.ts';

/** Reads the label the wrong way round: the first number as the depth. */
export const widthForDepth = {
  id: 'width-for-depth',
  /** The trowel its holder believes to hold. */
  swaps: (trowel: TrowelSetup): TrowelSetup => ({ ...trowel, widthMm: trowel.depthMm, depthMm: trowel.widthMm }),
} as const;
