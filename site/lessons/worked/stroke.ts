import { slideRate } from '@sim/bed/slide-law.ts';
import { pitchMm } from '@sim/trowel/notch.ts';
import { inches } from '@sim/units/length.ts';

import { notchById } from './notch.ts';

const notch = notchById('1-4-3-8-in-square');
const pitch = pitchMm(notch);
const strokeMm = notch.widthMm;
/** A light hand: a tenth of the push at which the ridges would spread by themselves. */
const LIGHT = 0.1;

const AIR_PA = 101_325;
const PERSON_N = 735;
const tileM2 = (inches(12) / 1000) ** 2;

/** One stroke on quarter-inch ridges, and a foot on a pocket of air (Boyle's law). */
export const stroke = {
  pitchMm: pitch,
  strokeMm,
  /** Across, at the lightest load, a ridge widens by the stroke itself. */
  gainShare: (slideRate(0, 1, 0) * strokeMm) / pitch,
  alongShare: (slideRate(LIGHT, 0, 0) * strokeMm) / pitch,
  pocketShare: 1 - AIR_PA / (AIR_PA + PERSON_N / tileM2),
} as const;
