import { GRAVITY } from '../numbers/physics.ts';

/** A glass square laid on a combed bed under a known weight for half a minute, and what shows through it. */
export interface GlassTest {
  /** On the bed, the glass included, kg. */
  massKg: number;
  sideMm: number;
  /** Share wetted, below one: a full glass only says that the mortar is softer than the answer. */
  coverage: number;
}

/**
 * Yield stress by the glass test: the ridge law read backwards (the geometry of EN 1347's wetting test with its own
 * 100 mm glass and 50 N).
 * @param pressure mean pressure over yield stress that the ridge law gives for this coverage and trowel
 * @returns Pa
 */
export const glassYieldPa = ({ massKg, sideMm }: GlassTest, pressure: number): number =>
  (massKg * GRAVITY) / (sideMm * sideMm * 1e-6) / pressure;
