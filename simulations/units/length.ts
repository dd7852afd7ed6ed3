/** Lengths: the only place that converts between millimetres and inches. */

/** A length in millimetres. */
export type Mm = number & { readonly unit?: 'mm' };
/** A length in inches. */
export type Inch = number & { readonly unit?: 'in' };

/** Exact by definition (international yard and pound agreement, 1959). */
export const MM_PER_INCH = 25.4;
const MM_PER_FOOT = 304.8;

export const inches = (value: number): Mm => value * MM_PER_INCH;
export const feet = (value: number): Mm => value * MM_PER_FOOT;
export const toInches = (length: Mm): Inch => length / MM_PER_INCH;
export const toFeet = (length: Mm): number => length / MM_PER_FOOT;
export const squareFeet = (value: number): number => (value * MM_PER_FOOT * MM_PER_FOOT) / 1e6;
export const toSquareFeet = (areaM2: number): number => (areaM2 * 1e6) / (MM_PER_FOOT * MM_PER_FOOT);
