import { airPathMm, bareStripContact } from '@sim/estimate/contact.ts';

import { bothWays } from './both-ways.ts';

/** A long tile combed either way, and a square one whose helper kept back from the line on two meeting sides. */
export const airWay = bothWays((size) => {
  const tile = { lengthMm: size(24), widthMm: size(12) };
  const squareMm = size(12);
  const bareMm = size(1 / 2);
  return {
    ...tile,
    longWayMm: airPathMm(tile, 0),
    shortWayMm: airPathMm(tile, 90),
    squareMm,
    bareMm,
    leftMm: squareMm - bareMm,
    bestShare: bareStripContact({ lengthMm: squareMm, widthMm: squareMm }, bareMm, { along: 1, across: 1 }),
  };
});
