import { MM_PER_INCH, type Mm } from './length.ts';

const greatestCommonDivisor = (a: number, b: number): number => (b === 0 ? a : greatestCommonDivisor(b, a % b));

/**
 * A length as the trade writes it: whole inches and a reduced fraction ("1/4", "1 1/2", "12").
 * @param length millimetres, zero or more
 * @param denominator the finest division, a power of two (16 for notches, 32 for lippage)
 * @returns the nearest such fraction, without the unit word
 */
export function asFraction(length: Mm, denominator = 32): string {
  const parts = Math.round((length / MM_PER_INCH) * denominator);
  const whole = Math.floor(parts / denominator);
  const rest = parts - whole * denominator;
  if (rest === 0) return String(whole);
  const divisor = greatestCommonDivisor(rest, denominator);
  const fraction = `${rest / divisor}/${denominator / divisor}`;
  return whole === 0 ? fraction : `${whole} ${fraction}`;
}
