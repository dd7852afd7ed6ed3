import { type RuleId, ruleById, valueOf } from '@sim/rules/rulebook.ts';

export const places = ['dry', 'shower', 'terrace', 'pool'] as const;
export const kinds = ['tile', 'stone', 'glass', 'panelFloor', 'panelWall'] as const;
export type Place = (typeof places)[number];
export type Kind = (typeof kinds)[number];

/** A rule whose one value is a share of the back. */
type ShareRule =
  | 'coverage.dry'
  | 'coverage.wet'
  | 'coverage.submerged'
  | 'coverage.stone'
  | 'coverage.glass'
  | 'coverage.panel-floor'
  | 'coverage.panel-wall';

const byPlace: Record<Place, ShareRule> = {
  dry: 'coverage.dry',
  shower: 'coverage.wet',
  terrace: 'coverage.wet',
  pool: 'coverage.submerged',
};
const byKind: Record<Exclude<Kind, 'tile'>, ShareRule> = {
  stone: 'coverage.stone',
  glass: 'coverage.glass',
  panelFloor: 'coverage.panel-floor',
  panelWall: 'coverage.panel-wall',
};

export interface PlaceDemand {
  place: Place;
  kind: Kind;
  share: number;
  rule: RuleId;
  title: string;
  /** The panel standard speaks of dry rooms only; elsewhere the wet figure stands in for it. */
  borrowed: boolean;
}

/** The higher of what the place and the tile ask for, and whose rule that is. */
export function demandOf(place: Place, kind: Kind): PlaceDemand {
  const ofPlace = byPlace[place];
  const ofKind = kind === 'tile' ? ofPlace : byKind[kind];
  // A dry room's share speaks of ceramic and porcelain only, so there the tile's own rule stands alone.
  const rule = place === 'dry' || valueOf(ofKind, 'share') >= valueOf(ofPlace, 'share') ? ofKind : ofPlace;
  return {
    place,
    kind,
    share: valueOf(rule, 'share'),
    rule,
    title: ruleById(rule).title,
    borrowed: rule !== ofKind,
  };
}

export const allDemands = (): PlaceDemand[] => kinds.flatMap((kind) => places.map((place) => demandOf(place, kind)));
