/**
 * Lippage that a bow brings. Two like tiles with a smooth (parabolic) bow lie side by side, one offset along the other
 * by a share f of its length; where the end of one meets the other's flank their edges differ by 4f(1−f) of the bow.
 */
export const lippageShare = (offset: number): number => 4 * offset * (1 - offset);

/**
 * Height of a bowed edge over the line through its ends, mm.
 * @param place 0…1 along the edge
 * @param bowMm middle over the ends, mm; below nought the edge is cupped
 */
export const edgeHeight = (place: number, bowMm: number): number => 4 * bowMm * place * (1 - place);

/** Difference between the two edges at a place along the first tile, mm; the second row is offset by a share of a length. */
export function stepAt(place: number, offset: number, bowMm: number): number {
  const beside = place - offset;
  return edgeHeight(place, bowMm) - edgeHeight(beside - Math.floor(beside), bowMm);
}
