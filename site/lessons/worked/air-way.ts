import { inches } from '@sim/units/length.ts';

const lengthMm = inches(24);
const widthMm = inches(12);
const squareMm = inches(12);
const bareMm = inches(1 / 2);

/** A long tile combed either way, and a square one whose helper kept back from the line on two meeting sides. */
export const airWay = {
  lengthMm,
  widthMm,
  /** From the middle of a lane to its open end: half its length. */
  longWayMm: lengthMm / 2,
  shortWayMm: widthMm / 2,
  squareMm,
  bareMm,
  leftMm: squareMm - bareMm,
  bestShare: (squareMm - bareMm) ** 2 / squareMm ** 2,
} as const;
