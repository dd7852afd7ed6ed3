import type { TrowelSetup } from '../bed/types.ts';
import { direction, sineOf } from '../numbers/plain.ts';
import { asFraction } from '../units/fraction.ts';

/** A notch as the trade names it; the tooth is the land between two notches. Lengths mm. */
export type Notch = Pick<TrowelSetup, 'shape' | 'widthMm' | 'depthMm' | 'toothMm' | 'yawDeg'>;

/**
 * What the blade's yaw leaves of every width, ridge and lane alike: the cosine of its turn off square to the stroke
 * (plain geometry). Heights stay, so the mean bed does too.
 */
export const yawNarrows = (trowel: Pick<TrowelSetup, 'yawDeg'>): number => direction(trowel.yawDeg ?? 0)[0];

/** From one ridge to the next, square to them. */
export const pitchMm = (notch: Notch): number => (notch.widthMm + notch.toothMm) * yawNarrows(notch);

/** Height of a fresh ridge: the depth left after wear, times the sine of the blade's angle to the floor. */
export const ridgeHeightMm = (trowel: TrowelSetup): number =>
  Math.max(0, trowel.depthMm - trowel.wearMm) * sineOf(trowel.angleDeg);

/**
 * Cross-section of the ridge one notch leaves, mm². Every height is multiplied by the sine of the blade's angle and
 * every width kept, because the blade moves square to its edge; so areas are multiplied by the sine (plain geometry).
 * A U notch is straight-sided with a half-round end; a slanted notch is a sheared square one and keeps its area.
 */
export function ridgeAreaMm2(trowel: TrowelSetup): number {
  const { shape, widthMm: w, angleDeg } = trowel;
  const depth = Math.max(0, trowel.depthMm - trowel.wearMm);
  const sine = sineOf(angleDeg) * yawNarrows(trowel);
  switch (shape) {
    case 'square':
    case 'slanted':
      return w * depth * sine;
    case 'v':
      return 0.5 * w * depth * sine;
    case 'u': {
      // Worn below the half-round end, what is left is a part of an ellipse; its area falls with the depth.
      const round = Math.min(depth, w / 2);
      return (w * (depth - round) + (Math.PI * w * round) / 4) * sine;
    }
  }
}

/** Mean thickness of the mortar a comb leaves, mm: the ridge's area over the pitch. */
export const meanBedMm = (trowel: TrowelSetup): number => ridgeAreaMm2(trowel) / pitchMm(trowel);

const shapeWords = { square: 'square', v: 'V', u: 'U', slanted: 'slanted' } as const;

/** What is stamped on the trowel: width × depth in fractions of an inch, and the shape ("1/4 × 3/8 in square"). */
export const notchLabel = (notch: Notch): string =>
  `${asFraction(notch.widthMm, 32)} × ${asFraction(notch.depthMm, 32)} in ${shapeWords[notch.shape]}`;
