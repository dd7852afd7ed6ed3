import type { NotchShape, TrowelSetup } from '../../simulations/bed/types.ts';
import { inches } from '../../simulations/units/length.ts';

const trowel = (shape: NotchShape, width: number, depth: number, tooth: number): TrowelSetup => ({
  shape,
  widthMm: inches(width),
  depthMm: inches(depth),
  toothMm: inches(tooth),
  angleDeg: 60,
  wearMm: 0,
});

/** Square notches, teeth as wide as the gaps unless said otherwise. */
export const square = (width: number, depth = width, tooth = width): TrowelSetup =>
  trowel('square', width, depth, tooth);
/** V notches whose points meet. */
export const vee = (width: number, depth: number): TrowelSetup => trowel('v', width, depth, 0);
/** Round notches. */
export const round = (width: number, depth: number, tooth: number): TrowelSetup => trowel('u', width, depth, tooth);

/** Trowels a setter may have in the truck (sizes in inches, as they are sold). */
export const squares: readonly TrowelSetup[] = [
  square(1 / 8),
  square(3 / 16),
  square(1 / 4),
  square(3 / 8),
  square(1 / 2),
];
export const narrow: readonly TrowelSetup[] = [
  square(1 / 4, 3 / 8, 1 / 4),
  square(1 / 4, 1 / 2, 1 / 4),
  square(3 / 8, 1 / 2, 3 / 8),
  square(3 / 16, 1 / 4, 3 / 16),
];
/** Teeth that are not as wide as the gaps; the label then has a third number. */
export const uneven: readonly TrowelSetup[] = [
  square(3 / 8, 3 / 8, 1 / 4),
  square(1 / 2, 1 / 2, 1 / 4),
  square(1 / 4, 1 / 4, 1 / 2),
  square(1 / 4, 3 / 8, 1 / 2),
  square(3 / 16, 1 / 4, 5 / 16),
];
export const vees: readonly TrowelSetup[] = [
  vee(3 / 16, 5 / 32),
  vee(1 / 4, 3 / 16),
  vee(1 / 4, 1 / 4),
  vee(3 / 8, 5 / 16),
];
export const rounds: readonly TrowelSetup[] = [round(3 / 8, 3 / 8, 1 / 4), round(3 / 4, 9 / 16, 3 / 8)];

export const trowels: readonly TrowelSetup[] = [...squares, ...narrow, ...uneven, ...vees, ...rounds];

export const atAngle = (one: TrowelSetup, angleDeg: number): TrowelSetup => ({ ...one, angleDeg });
export const sameTrowel = (a: TrowelSetup, b: TrowelSetup): boolean =>
  a.shape === b.shape && a.widthMm === b.widthMm && a.depthMm === b.depthMm && a.toothMm === b.toothMm;
