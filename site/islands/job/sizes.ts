import type { UnitSystem } from '@sim/units/format.ts';

/** Nominal sizes that tile is commonly sold in, length × width in the box's own unit; a short cut, not a limit. */
export const USUAL_SIZES: Record<UnitSystem, readonly (readonly [length: string, width: string])[]> = {
  imperial: [
    ['2', '2'],
    ['6', '3'],
    ['6', '6'],
    ['8', '4'],
    ['12', '12'],
    ['16', '16'],
    ['24', '12'],
    ['24', '24'],
    ['36', '6'],
    ['48', '8'],
    ['48', '24'],
  ],
  metric: [
    ['50', '50'],
    ['150', '75'],
    ['150', '150'],
    ['200', '100'],
    ['300', '300'],
    ['400', '400'],
    ['600', '300'],
    ['600', '600'],
    ['900', '150'],
    ['1200', '200'],
    ['1200', '600'],
  ],
};

/** The place of a usual size in its list as text for a select; empty for another size. */
export const usualSizeOf = (units: UnitSystem, length: string, width: string): string => {
  const at = USUAL_SIZES[units].findIndex((size) => size[0] === length.trim() && size[1] === width.trim());
  return at < 0 ? '' : String(at);
};
