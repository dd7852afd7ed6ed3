import { pressureAt, type Ridges } from '@sim/bed/ridge-law.ts';
import { meanBedMm, pitchMm } from '@sim/trowel/notch.ts';
import type { TrowelSetup } from '@sim/bed/types.ts';

const MM2_PER_M2 = 1e6;

/** Ridges of one trowel for the ridge law. */
export const ridgesOf = (trowel: TrowelSetup): Ridges => ({
  pitchMm: pitchMm(trowel),
  meanMm: meanBedMm(trowel),
  touchShare: trowel.shape === 'v' ? 0 : trowel.widthMm / pitchMm(trowel),
});

/** Push that a flat square tile needs to stand at a coverage by pressing alone, N (ridge law). */
export const pushFor = (coverage: number, ridges: Ridges, yieldPa: number, edgeMm: number): number =>
  (pressureAt(coverage, ridges) * yieldPa * edgeMm * edgeMm) / MM2_PER_M2;

export interface PressCurve {
  edgeMm: number;
  points: { coverage: number; pushN: number }[];
}

const STEPS = 24;

/** The push for every coverage from the first touch to full, for a square tile. */
export function pressCurve(ridges: Ridges, yieldPa: number, edgeMm: number): PressCurve {
  const from = ridges.touchShare;
  const points = Array.from({ length: STEPS + 1 }, (_, i) => {
    const coverage = from + ((1 - from) * i) / STEPS;
    return { coverage, pushN: pushFor(coverage, ridges, yieldPa, edgeMm) };
  });
  return { edgeMm, points };
}
