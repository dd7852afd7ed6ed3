import type { TrowelSetup } from '../bed/types.ts';
import { pitchMm, ridgeAreaMm2, ridgeHeightMm, yawNarrows } from './notch.ts';

/** A point of a ridge's outline: across the ridge from its middle, and up. mm. */
export type OutlinePoint = [acrossMm: number, upMm: number];

/** Lean of a slanted notch's flanks: run over rise (model; slanted notches are cut near 45°, and drag stands them up). */
export const SLANT = 0.5;

const ROUND_STEPS = 24;

/** Outline of one fresh ridge, left foot to right foot, as the notch leaves it (a slanted one leans to the right). */
export const ridgeOutline = (trowel: TrowelSetup): OutlinePoint[] => narrowed(notchOutline(trowel), trowel);

function narrowed(points: OutlinePoint[], trowel: TrowelSetup): OutlinePoint[] {
  const narrows = yawNarrows(trowel);
  return points.map(([across, up]) => [narrows * across, up]);
}

/** The outline in the plane of a blade drawn square to its edge. */
function notchOutline(trowel: TrowelSetup): OutlinePoint[] {
  const half = trowel.widthMm / 2;
  const height = ridgeHeightMm(trowel);
  switch (trowel.shape) {
    case 'square':
      return [
        [-half, 0],
        [-half, height],
        [half, height],
        [half, 0],
      ];
    case 'v':
      return [
        [-half, 0],
        [0, height],
        [half, 0],
      ];
    case 'slanted': {
      const lean = height * SLANT;
      return [
        [-half - lean / 2, 0],
        [-half + lean / 2, height],
        [half + lean / 2, height],
        [half - lean / 2, 0],
      ];
    }
    case 'u': {
      const depth = Math.max(0, trowel.depthMm - trowel.wearMm);
      const round = depth === 0 ? 0 : (height / depth) * Math.min(depth, half);
      const top: OutlinePoint[] = [];
      for (let n = 0; n <= ROUND_STEPS; n += 1) {
        const t = (2 * n) / ROUND_STEPS - 1;
        // Even steps of the chord crowd nothing at the steep ends; the cubic brings points there.
        const across = 1.5 * t - 0.5 * t * t * t;
        top.push([half * across, height - round + round * Math.sqrt(Math.max(0, 1 - across * across))]);
      }
      return [[-half, 0], ...top, [half, 0]];
    }
  }
}

/** A ridge as a height over the floor, one pitch long, ready to be averaged over a cell. */
export interface RidgeProfile {
  pitchMm: number;
  heightMm: number;
  /** Bed left by the comb, mm. */
  meanMm: number;
  /** Running area from the middle of the ridge over one pitch, SAMPLES + 1 values, mm². */
  area: Float64Array;
  /** Height in the middle of each sample, mm. */
  height: Float64Array;
}

const SAMPLES = 1024;

/** Height at a distance from the ridge's middle, for outlines whose up-values are a function of across. */
function heightAt(points: OutlinePoint[], across: number): number {
  for (let n = 1; n < points.length; n += 1) {
    const [x0, y0] = points[n - 1]!;
    const [x1, y1] = points[n]!;
    if (across >= x0 && across <= x1 && x1 > x0) return y0 + ((y1 - y0) * (across - x0)) / (x1 - x0);
  }
  return 0;
}

/** How far the top of a fresh slanted ridge lies beside its foot, mm; never past the next ridge's foot. */
export const ridgeLeanMm = (trowel: TrowelSetup): number =>
  Math.min(ridgeHeightMm(trowel) * SLANT, trowel.toothMm, trowel.widthMm) * yawNarrows(trowel);

/** A ridge as upright columns: a leaning one touches floor and tile as wide as a square one; its lean is kept apart. */
const columnsOf = (trowel: TrowelSetup): OutlinePoint[] =>
  ridgeOutline(trowel.shape === 'slanted' ? { ...trowel, shape: 'square' } : trowel);

/** The profile of a trowel's ridge; its mean is exact whatever the sampling. */
export function ridgeProfile(trowel: TrowelSetup): RidgeProfile {
  const pitch = pitchMm(trowel);
  const points = columnsOf(trowel);
  const area = new Float64Array(SAMPLES + 1);
  const height = new Float64Array(SAMPLES);
  const step = pitch / SAMPLES;
  for (let n = 0; n < SAMPLES; n += 1) {
    const u = (n + 0.5) * step;
    height[n] = heightAt(points, u > pitch / 2 ? u - pitch : u);
    area[n + 1] = area[n]! + step * height[n]!;
  }
  const exact = ridgeAreaMm2(trowel);
  const scale = area[SAMPLES]! > 0 ? exact / area[SAMPLES]! : 0;
  for (let n = 0; n <= SAMPLES; n += 1) area[n] = area[n]! * scale;
  return { pitchMm: pitch, heightMm: ridgeHeightMm(trowel), meanMm: exact / pitch, area, height };
}

/** What a comb left at a place: the mean height over a small window, and the level a front would run on there, mm. */
export interface CombedSpot {
  heightMm: number;
  /** Where a wall of a ridge passes through the window this is the foot of the wall, else the height itself. */
  footMm: number;
}

/**
 * Mean height and foot over a window about a distance u from the middle of a ridge, for any u.
 * @param into takes the answer, so that a field of a million places makes no garbage
 */
export function spotAt(profile: RidgeProfile, u: number, window: number, into: CombedSpot): void {
  const { area, height, pitchMm: pitch } = profile;
  const perPitch = area[SAMPLES]!;
  const from = (u - window / 2) / pitch;
  const to = (u + window / 2) / pitch;
  const fromPitch = Math.floor(from);
  const toPitch = Math.floor(to);
  const a = (from - fromPitch) * SAMPLES;
  const b = (to - toPitch) * SAMPLES;
  const i = a >= SAMPLES ? SAMPLES - 1 : Math.floor(a);
  const k = b >= SAMPLES ? SAMPLES - 1 : Math.floor(b);
  const left = height[i]!;
  const right = height[k]!;
  const sum =
    (toPitch - fromPitch) * perPitch +
    (area[k]! - area[i]!) +
    (b - k) * (area[k + 1]! - area[k]!) -
    (a - i) * (area[i + 1]! - area[i]!);
  const mean = sum / window;
  into.heightMm = mean;
  into.footMm = Math.abs(right - left) > 0.5 * profile.heightMm ? Math.min(left, right, mean) : mean;
}
