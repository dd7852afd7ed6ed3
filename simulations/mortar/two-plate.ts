import { rootOfRising } from '../numbers/find-root.ts';

/**
 * The two-plate test: a known volume between two smooth plates under a known weight spreads to a round patty and
 * stops. Its diameter gives the yield stress: τ = F / (πR² [1.366 + 2πR³/(3V)]). The second term is the plastic disc
 * squeezed thin (2πτR³/3h with h = V/πR²); the first is what the free rim adds, an upper bound to ±0.4 % for R/h
 * from 1 to 16 (derived). Holds for R ≥ 2h, a gap of some grains, and a test over within a minute.
 */
const RIM = 1.366;
const MM2_PER_M2 = 1e6;

/** What is between the plates and on them. */
export interface TwoPlates {
  /** Volume of the mortar, mm³. */
  volumeMm3: number;
  /** Weight on it, the upper plate's own included, N. */
  forceN: number;
}

/** Force over yield stress for a patty of radius R, mm². */
const forceOverYield = (radiusMm: number, volumeMm3: number): number =>
  Math.PI * radiusMm * radiusMm * (RIM + (2 * Math.PI * radiusMm ** 3) / (3 * volumeMm3));

/** Thickness of the patty, mm. */
export const pattyMm = (diameterMm: number, volumeMm3: number): number => volumeMm3 / (Math.PI * (diameterMm / 2) ** 2);

/** Radius over thickness from which the formula holds. */
const FLAT = 2;

/** Diameter from which a patty of a volume is flat enough for the test, mm. */
export const leastDiameter = (volumeMm3: number): number => 2 * Math.cbrt((FLAT * volumeMm3) / Math.PI);

/** True where the two-plate formula holds: the radius at least twice the thickness. */
export const isFlatPatty = (diameterMm: number, volumeMm3: number): boolean => diameterMm >= leastDiameter(volumeMm3);

/** Yield stress, Pa, from the diameter that the patty stops at, mm. */
export const yieldFromPatty = (diameterMm: number, { volumeMm3, forceN }: TwoPlates): number =>
  (forceN * MM2_PER_M2) / forceOverYield(diameterMm / 2, volumeMm3);

/** Diameter that a patty stops at, mm: the inverse of `yieldFromPatty`. @param yieldPa above zero */
export const pattyDiameter = (yieldPa: number, { volumeMm3, forceN }: TwoPlates): number =>
  2 * rootOfRising((radius) => forceOverYield(radius, volumeMm3) - (forceN * MM2_PER_M2) / yieldPa, 0, 2000, 60);
