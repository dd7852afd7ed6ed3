import type { Warp } from './warp.ts';

/** A surface as ISO 10545-2 measures it, mm; a share of a length is the reader's own division. */
export interface IsoMeasures {
  /** Middle over the plane through three corners. */
  centreMm: number;
  /** Middle of each edge over that plane: the two along the length (least y first), then the two along the width. */
  edgesMm: [number, number, number, number];
  /** The fourth corner over the plane of the other three. */
  twistMm: number;
}

/**
 * Centre curvature, edge curvature and warpage of a surface as ISO 10545-2 defines them: departures from the plane
 * through three corners (here all but the one at the greatest x and y), taken at the middle, at the middles of the
 * edges and at the fourth corner.
 */
export function isoMeasures(surface: Warp, lengthMm: number, widthMm: number): IsoMeasures {
  const at = (u: number, v: number): number => surface((u * lengthMm) / 2, (v * widthMm) / 2);
  const corner = at(-1, -1);
  const along = (at(1, -1) - corner) / 2;
  const across = (at(-1, 1) - corner) / 2;
  const over = (u: number, v: number): number => at(u, v) - (corner + along * (u + 1) + across * (v + 1));
  return { centreMm: over(0, 0), edgesMm: [over(0, -1), over(0, 1), over(-1, 0), over(1, 0)], twistMm: over(1, 1) };
}
