/** Length of the toothed edge of a common floor trowel, mm (common practice, no published source: about 11 in). */
export const BLADE_LONG_MM = 280;
