import type { BedSetup } from '@sim/bed/types.ts';

/** Across the ridges, degrees 0…180. */
export const acrossRidges = (setup: BedSetup): number => (((setup.comb.directionDeg + 90) % 180) + 180) % 180;
