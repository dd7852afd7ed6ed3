import { asFraction } from './fraction.ts';
import { toInches, toSquareFeet, type Mm } from './length.ts';
import { signed } from './signed.ts';

/** Which of the two systems a reader wants. */
export type UnitSystem = 'imperial' | 'metric';

/** Half rounds up as a person would (6.35 is 6.4), whatever the binary form of the number. */
const rounded = (value: number, digits: number): string => {
  const scale = 10 ** digits;
  const text = (Math.round(value * scale * (1 + Number.EPSILON)) / scale).toFixed(digits);
  return digits > 0 ? text.replace(/\.?0+$/, '') : text;
};

/** From here on a tape is read to the millimetre, mm. */
const TAPE_MM = 50;

/** A length with its unit: fractions of an inch, or millimetres to a tenth, from two fingers' breadth on to the whole one. */
export const formatLength = (length: Mm, system: UnitSystem, denominator = 32): string =>
  system === 'imperial'
    ? `${signed(length, (size) => asFraction(size, denominator))} in`
    : `${signed(length, (size) => rounded(size, size < TAPE_MM ? 1 : 0))} mm`;

/** A small gap where fractions would mislead: thousandths of an inch, or hundredths of a millimetre. */
export const formatGap = (length: Mm, system: UnitSystem): string =>
  system === 'imperial'
    ? `${signed(length, (size) => toInches(size).toFixed(3))} in`
    : `${signed(length, (size) => rounded(size, 2))} mm`;

/** A length in a sum that is written out: fractions add up as they stand, millimetres only to the hundredth. */
export const formatInSum = (length: Mm, system: UnitSystem): string =>
  system === 'imperial' ? formatLength(length, system) : formatGap(length, system);

/** An area in m² or ft², given in m². */
export const formatArea = (areaM2: number, system: UnitSystem): string =>
  system === 'imperial' ? `${rounded(toSquareFeet(areaM2), 0)} ft²` : `${rounded(areaM2, 1)} m²`;

/** A share between 0 and 1 as a whole percentage. */
export const formatShare = (share: number): string => `${Math.round(share * 100)} %`;
