import type { Pull, PulledTile } from '../../simulations/judge/pull-types.ts';

/** Lifted tiles as the judge takes them, with what a question leaves unsaid filled in. */
export function drawnPull(
  given: Partial<Omit<Pull, 'pulls'>> & { pulls: (Partial<PulledTile> & { coverage: number })[] },
): Pull {
  return {
    standards: 'north-america',
    exposure: 'interior-dry',
    surface: 'floor',
    kind: 'tile',
    material: 'porcelain',
    thicknessMm: 9,
    hollowSound: null,
    overMembrane: false,
    bedMm: null,
    signs: {
      mortarOn: null,
      ridges: null,
      cutTilesOnly: null,
      powder: null,
      skin: null,
      crackOverSeam: null,
      dropsStand: null,
    },
    ...given,
    pulls: given.pulls.map((tile) => ({ backCoatOnly: false, voids: [], ...tile })),
  };
}
