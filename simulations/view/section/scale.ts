import type { Profile } from './profile.ts';

/** The part of a section to draw and what stands above it. */
export interface SectionView {
  profile: Profile;
  /** The tile's thickness, mm. */
  thicknessMm: number;
  /** The stretch to show, mm from the tile's centre; the whole section when left out. */
  fromMm?: number;
  toMm?: number;
  /** How many times heights are drawn taller than lengths; the greatest that fits, up to 8, when left out. */
  taller?: number;
}

/** Maps a section to device pixels. */
export interface SectionScale {
  fromMm: number;
  toMm: number;
  /** Height over the floor's mean plane at the drawing's lower edge, mm. */
  lowestMm: number;
  taller: number;
  x: (placeMm: number) => number;
  y: (heightMm: number) => number;
}

const FLOOR_SHOWN_MM = 5;
const HEADROOM_MM = 1;
const NEAT_FACTORS = [8, 6, 5, 4, 3, 2, 1];

/** Lowest and highest thing to show, mm over the floor's mean plane. */
function extent(view: SectionView): [number, number] {
  let low = Infinity;
  let high = -Infinity;
  const { floorMm, mortarMm, undersideMm, leaning } = view.profile;
  for (let step = 0; step < floorMm.length; step++) {
    low = Math.min(low, floorMm[step]!);
    high = Math.max(high, mortarMm[step]!, floorMm[step]! + (leaning?.tallestMm ?? 0));
    const underside = undersideMm[step]!;
    if (!Number.isNaN(underside)) high = Math.max(high, underside + view.thicknessMm);
  }
  return [low - FLOOR_SHOWN_MM, high + HEADROOM_MM];
}

/**
 * Chooses the scale: the stretch fills the width; heights get the greatest whole factor of `NEAT_FACTORS` that fits.
 * A factor other than 1 must be stated beside the drawing.
 * @param width height device pixels
 */
export function sectionScale(view: SectionView, width: number, height: number): SectionScale {
  const { placeMm, cellMm } = view.profile;
  const fromMm = view.fromMm ?? placeMm[0]! - cellMm / 2;
  const toMm = view.toMm ?? placeMm.at(-1)! + cellMm / 2;
  const perMm = width / Math.max(cellMm, toMm - fromMm);
  const [low, high] = extent(view);
  const taller =
    view.taller ??
    NEAT_FACTORS.find((factor) => (high - low) * perMm * factor <= height) ??
    height / ((high - low) * perMm);
  const perMmUp = perMm * taller;
  const spare = Math.max(0, height - (high - low) * perMmUp);
  return {
    fromMm,
    toMm,
    lowestMm: low - spare / perMmUp,
    taller,
    x: (mm) => (mm - fromMm) * perMm,
    // Spare height goes under the floor, where a slab has plenty.
    y: (mm) => height - spare - (mm - low) * perMmUp,
  };
}
