import type { StandardSet } from '../rules/rule.ts';
import { type RuleId, valueOf } from '../rules/rulebook.ts';
import { setHabits } from '../rules/sets.ts';
import type { Area, JobTile } from './job-types.ts';

export const longestEdge = (tile: JobTile): number => Math.max(tile.lengthMm, tile.widthMm);
export const shortestEdge = (tile: JobTile): number => Math.min(tile.lengthMm, tile.widthMm);

/** A size printed as 305 or 610 is the 12 or 24 in one: sizes are nominal to within two millimetres. */
const NOMINAL_MM = 2;
export const isOver = (length: number, limit: number): boolean => length > limit + NOMINAL_MM;
export const isFrom = (length: number, limit: number): boolean => length >= limit - NOMINAL_MM;

/** The short edge of what must lie flat by itself: a piece of a sheet, or the tile. */
export const pieceEdge = (tile: JobTile): number => tile.pieceMm ?? shortestEdge(tile);

/** Pieces on sheets, too small to be slid one by one. */
export const isMosaic = (tile: JobTile): boolean =>
  tile.pieceMm !== null || tile.material === 'mosaic' || pieceEdge(tile) <= valueOf('mosaic.piece', 'edge');

/** Gauged porcelain of a square metre and more. */
export const isPanel = (tile: JobTile): boolean =>
  tile.material === 'porcelain' &&
  tile.thicknessMm <= valueOf('panel.thickness', 'most') &&
  (tile.lengthMm * tile.widthMm) / 1e6 >= valueOf('panel.size', 'area');

/** Any edge from which the trade calls a tile large. */
export const isLarge = (tile: JobTile): boolean =>
  !isMosaic(tile) && isFrom(longestEdge(tile), valueOf('large.threshold', 'edge'));

export const isWet = (area: Area): boolean => area.exposure !== 'interior-dry';
export const isOutdoor = (area: Area): boolean => area.exposure === 'exterior' || area.exposure === 'submerged';

export interface WarpLimit {
  rule: RuleId;
  mm: number;
}

const capped = (edge: number, share: number, most: number): number => Math.min(edge * share, most);

/** How far an edge of this length may be bowed by the standard: the lesser of share and length. */
export function allowedWarp(tile: JobTile, edgeMm: number, standards: StandardSet): WarpLimit {
  const { warp } = setHabits[standards];
  const made = tile.material === 'porcelain' ? warp.porcelain : warp.other;
  const rule = tile.edge === 'rectified' ? warp.rectified : made;
  return { rule, mm: capped(edgeMm, valueOf(rule, 'share'), valueOf(rule, 'most')) };
}

/** Kilograms to a square metre, from the published weights by material. */
export function tileKgM2(tile: Pick<JobTile, 'material' | 'thicknessMm'>): number {
  const perMm = {
    porcelain: valueOf('tile.weights', 'porcelain10') / 10,
    ceramic: valueOf('tile.weights', 'ceramic10') / 10,
    mosaic: valueOf('tile.weights', 'porcelain10') / 10,
    stone: valueOf('tile.weights', 'stone10') / 10,
    glass: GLASS_KG_M2_MM,
  }[tile.material];
  return perMm * tile.thicknessMm;
}
/** Soda-lime glass, 2,500 kg/m³ (physics, not a rule of the trade). */
const GLASS_KG_M2_MM = 2.5;
