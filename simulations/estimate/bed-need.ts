import type { StandardSet } from '../rules/rule.ts';
import { type RuleId, valueOf } from '../rules/rulebook.ts';
import type { Area } from './job-types.ts';
import { allowedWarp, longestEdge, pieceEdge, isMosaic } from './tile-facts.ts';

/** The bed a notch must leave at the usual blade angle, mm, and what takes it. */
export interface BedNeed {
  total: number;
  sand: number;
  warp: number;
  floor: number;
  relief: number;
  warpRule: RuleId;
}

/** A dip that a floor may have over a span, between two limits that a standard gives; never more than the longer. */
function dipOver(span: number, shortDip: number, shortOver: number, longDip: number, longOver: number): number {
  if (span <= shortOver) return (shortDip * span) / shortOver;
  return Math.min(longDip, shortDip + ((longDip - shortDip) * (span - shortOver)) / (longOver - shortOver));
}

/**
 * The dip a floor may have under one tile, mm. The short-range limit of large tile is used for every size: it is what
 * a floor is brought to, and a long straightedge says nothing about so short a span.
 */
export const dipUnderTile = (spanMm: number): number =>
  dipOver(
    spanMm,
    valueOf('flatness.large', 'short'),
    valueOf('flatness.large', 'shortOver'),
    valueOf('flatness.large', 'long'),
    valueOf('flatness.large', 'longOver'),
  );

/**
 * What the job must find in the bed, by the model of rule `bed.need`.
 * @param coated the back is buttered, so that the coat and not the bed fills its relief
 */
export function bedNeed(area: Area, standards: StandardSet, coated = false): BedNeed {
  const { tile } = area;
  const span = isMosaic(tile) ? pieceEdge(tile) : longestEdge(tile);
  const limit = allowedWarp(tile, span, standards);
  const bow = tile.measuredBowMm === null ? limit.mm : Math.abs(tile.measuredBowMm);
  const parts = {
    sand: valueOf('bed.need', 'grain'),
    warp: bow * valueOf('bed.need', 'warpShare'),
    floor: dipUnderTile(span) * valueOf('bed.need', 'floorTimes'),
    relief: coated ? 0 : tile.reliefMm,
  };
  return {
    ...parts,
    total: parts.sand + parts.warp + parts.floor + parts.relief,
    warpRule: tile.measuredBowMm === null ? limit.rule : 'lippage.actual',
  };
}
