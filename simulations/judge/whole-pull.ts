import { fillIn } from '../input/fill-in.ts';
import type { Assumed } from '../estimate/job-types.ts';
import type { Pull, PulledTile } from './pull-types.ts';

type Loose<T> = { [K in keyof T]?: T[K] | undefined };

/** Lifted tiles as far as somebody told of them. */
export type GivenPull = Loose<Omit<Pull, 'pulls' | 'signs'>> & {
  signs?: Loose<Pull['signs']> | undefined;
  pulls?: readonly GivenTile[] | undefined;
};
interface GivenTile {
  coverage: number;
  backCoatOnly?: boolean | undefined;
  voids?: readonly (Loose<PulledTile['voids'][number]> & { areaMm2: number })[] | undefined;
}

/** A void whose place nobody gave is taken to lie well inside the tile. */
const FAR_MM = 3600;

/** Nobody looked at anything yet. */
export const noSigns: Pull['signs'] = {
  mortarOn: null,
  ridges: null,
  cutTilesOnly: null,
  powder: null,
  skin: null,
  crackOverSeam: null,
  dropsStand: null,
};

const kindOf = (material: Pull['material'] | undefined): Pull['kind'] =>
  material === 'stone' || material === 'glass' ? material : 'tile';

const defaults = (given: GivenPull): Omit<Pull, 'pulls'> => ({
  standards: 'north-america',
  exposure: 'interior-dry',
  surface: 'floor',
  kind: kindOf(given.material),
  material: given.kind === 'stone' || given.kind === 'glass' ? given.kind : 'porcelain',
  thicknessMm: 9,
  hollowSound: null,
  overMembrane: false,
  bedMm: null,
  signs: noSigns,
});

const tileOf = (given: GivenTile, n: number, assumed: Assumed): PulledTile => ({
  ...fillIn(given, { coverage: 0, backCoatOnly: false, voids: [] }, `pulls[${n}]`, assumed),
  voids: (given.voids ?? []).map((one, v) =>
    fillIn(one, { areaMm2: 0, toCornerMm: FAR_MM, toEdgeMm: FAR_MM }, `pulls[${n}].voids[${v}]`, assumed),
  ),
});

/** Lifted tiles with what nobody said filled in, for the judge; each default taken is noted in `assumed`. */
export function wholePull(given: GivenPull, assumed: Assumed = {}): Pull {
  const { pulls = [], ...rest } = given;
  return {
    ...fillIn(rest, defaults(given), '', assumed),
    pulls: pulls.map((one, n) => tileOf(one, n, assumed)),
  };
}
