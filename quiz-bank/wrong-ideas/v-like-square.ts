import type { TrowelSetup } from '../../simulations/bed/types.ts';

/** "A quarter is a quarter": a V leaves what a square of the same size leaves. */
export const vLikeSquare = {
  id: 'v-like-square',
  /** The square notch its holder takes a V for: named by its width, so as deep as wide, teeth as wide as the gaps. */
  squares: (trowel: TrowelSetup): TrowelSetup => ({
    ...trowel,
    shape: 'square',
    depthMm: trowel.widthMm,
    toothMm: trowel.widthMm,
  }),
} as const;
