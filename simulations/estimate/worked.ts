import { valueOf } from '../rules/rulebook.ts';

/** Facial size a rectified tile may have about its sample's average, mm (ANSI A137.1, the lesser of share and length). */
export function facialSize(averageMm: number): { leastMm: number; mostMm: number } {
  const off = Math.min(averageMm * valueOf('size.rectified', 'share'), valueOf('size.rectified', 'most'));
  return { leastMm: averageMm - off, mostMm: averageMm + off };
}

/** Bond strength left when only a share of the back is bonded: in proportion, as rule `coverage.strength` says. */
export const bondShare = (fullStrength: number, coverage: number): number => fullStrength * coverage;
