import { formatLength, type UnitSystem } from './format.ts';
import { toFeet, type Mm } from './length.ts';
import { plainNumber } from './plain-number.ts';

const HALF_METRE = 500;
const BAR_STEP = 100;
const TINY = 1e-6;

const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) < TINY;
const inFeet = (length: Mm): boolean => isWhole(toFeet(length));

/** Feet to the half, as a tape is named. */
function halfFeet(length: Mm): string {
  const halves = Math.round(toFeet(length) * 2);
  return `${Math.floor(halves / 2)}${halves % 2 === 0 ? '' : ' 1/2'} ft`;
}

/**
 * A length across a floor in feet or metres, given in mm. One that is round in one system, whole feet or half metres, is
 * said round in the other too: the bar of ten feet is a bar of 3 m. Any other keeps its figures.
 */
export function formatSpan(length: Mm, system: UnitSystem): string {
  if (system === 'metric') return `${inFeet(length) ? Math.round(length / 100) / 10 : plainNumber(length / 1000)} m`;
  return !inFeet(length) && isWhole(length / HALF_METRE) ? halfFeet(length) : `${plainNumber(toFeet(length))} ft`;
}

/** The length of a short bar laid on a floor, given in mm: in inches, or as bars are cut in millimetres. */
export const formatBar = (length: Mm, system: UnitSystem): string =>
  system === 'metric' && inFeet(length)
    ? `${Math.round(length / BAR_STEP) * BAR_STEP} mm`
    : formatLength(length, system);
