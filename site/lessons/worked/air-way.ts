import { airPathMm, bareStripContact } from '@sim/estimate/contact.ts';
import { inches } from '@sim/units/length.ts';

const tile = { lengthMm: inches(24), widthMm: inches(12) };
const squareMm = inches(12);
const bareMm = inches(1 / 2);

/** A long tile combed either way, and a square one whose helper kept back from the line on two meeting sides. */
export const airWay = {
  ...tile,
  longWayMm: airPathMm(tile, 0),
  shortWayMm: airPathMm(tile, 90),
  squareMm,
  bareMm,
  leftMm: squareMm - bareMm,
  bestShare: bareStripContact({ lengthMm: squareMm, widthMm: squareMm }, bareMm, { along: 1, across: 1 }),
} as const;
