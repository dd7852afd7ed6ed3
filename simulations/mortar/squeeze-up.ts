/** A sheet of equal pieces pressed into a bed. Lengths mm. */
export interface PressedSheet {
  /** Mortar spread, as an even bed. */
  combedMm: number;
  /** Bed left under the pieces. */
  bedMm: number;
  pieceLengthMm: number;
  pieceWidthMm: number;
  jointMm: number;
}

/** Share of the plan that is joint, for equal pieces, 0…1. */
export const jointShare = (lengthMm: number, widthMm: number, jointMm: number): number =>
  1 - (lengthMm * widthMm) / ((lengthMm + jointMm) * (widthMm + jointMm));

/**
 * How high mortar rises in the joints above the backs of the pieces, mm: what the pieces push aside has nowhere else to
 * go (conservation of volume). Nothing rises without a joint, nor from a bed that is thin already.
 */
export function riseInJoints({ combedMm, bedMm, pieceLengthMm, pieceWidthMm, jointMm }: PressedSheet): number {
  const share = jointShare(pieceLengthMm, pieceWidthMm, jointMm);
  return share <= 0 ? 0 : Math.max(0, combedMm - bedMm) / share;
}
