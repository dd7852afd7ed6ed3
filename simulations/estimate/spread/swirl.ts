import { valueOf } from '../../rules/rulebook.ts';

/** What a swirl is combed under and how far the tile is moved on it, mm. */
export interface SwirledBed {
  lengthMm: number;
  widthMm: number;
  pitchMm: number;
  slideMm: number;
}

/**
 * Coverage on swirled ridges, 0…1, from what straight ones would have come to. A swirl closes its valleys: air that
 * would have left along them carries the tile, the more the further it is to an edge and the further the ridges have
 * closed; moving the tile breaks most of the pockets open. Read off some hundred and fifty runs of the bed solver, which
 * it follows to four points (root mean square); it does not hold for tiles much over 2 ft.
 * @param straight coverage of the same bed combed straight, 0…1
 */
export function swirledCoverage(straight: number, { lengthMm, widthMm, pitchMm, slideMm }: SwirledBed): number {
  const at = (name: 'from' | 'to' | 'pressed' | 'moved' | 'breaks'): number => valueOf('model.swirl', name);
  // Area over half the girth: how far inside the tile its back lies on the whole.
  const wide = (2 * lengthMm * widthMm) / (lengthMm + widthMm);
  const size = Math.min(1, Math.max(0, (wide - at('from')) / (at('to') - at('from'))));
  const still = Math.exp(-slideMm / (at('breaks') * pitchMm));
  const lost = at('moved') + (at('pressed') - at('moved')) * still;
  return straight * (1 - size * lost * straight ** 2);
}
