import { valueOf } from '../../rules/rulebook.ts';

/** What a swirl is combed under and how far the tile is moved on it, mm. */
export interface SwirledBed {
  lengthMm: number;
  widthMm: number;
  pitchMm: number;
  slideMm: number;
}

/** What a swirl costs: sizes of tile in mm between which it begins to tell, the share lost, pitches of slide that halve it. */
export interface SwirlCost {
  from: number;
  to: number;
  pressed: number;
  breaks: number;
}

const ruledCost = (): SwirlCost => ({
  from: valueOf('model.swirl', 'from'),
  to: valueOf('model.swirl', 'to'),
  pressed: valueOf('model.swirl', 'pressed'),
  breaks: valueOf('model.swirl', 'breaks'),
});

/**
 * Coverage on swirled ridges, 0…1, from what straight ones would have come to. A swirl closes its valleys: air that
 * would have left along them carries the tile, the more the further it is to an edge and the further the ridges have
 * closed; the further the tile is moved the more of the pockets break open. Fitted to runs of the bed solver by
 * `npm run fit`, which prints how far it is off; it does not hold for tiles much over 2 ft.
 * @param straight coverage of the same bed combed straight, 0…1
 * @param cost what a swirl costs, from the rules unless it is being fitted
 */
export function swirledCoverage(
  straight: number,
  { lengthMm, widthMm, pitchMm, slideMm }: SwirledBed,
  cost: SwirlCost = ruledCost(),
): number {
  // Area over half the girth: how far inside the tile its back lies on the whole.
  const wide = (2 * lengthMm * widthMm) / (lengthMm + widthMm);
  const size = Math.min(1, Math.max(0, (wide - cost.from) / (cost.to - cost.from)));
  const lost = cost.pressed / (1 + slideMm / (cost.breaks * pitchMm));
  return straight * (1 - size * lost * straight ** 2);
}
