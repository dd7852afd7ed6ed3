import { MM_PER_INCH } from './length.ts';
import type { UnitSystem } from './format.ts';
import { signed } from './signed.ts';

/** Exact by definition: the avoirdupois pound (0.45359237 kg) under standard gravity (9.80665 m/s²). */
export const N_PER_POUND_FORCE = 0.45359237 * 9.80665;
const PA_PER_PSI = N_PER_POUND_FORCE / (MM_PER_INCH / 1000) ** 2;
const MM3_PER_CM3 = 1000;

const digits = (value: number, most: number): string =>
  signed(value, (size) => {
    const text = size.toFixed(size >= 100 ? 0 : most);
    return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  });

/** A force given in N, as pounds or newtons; whole numbers from ten up, as a hand would judge it. */
export function formatForce(newtons: number, system: UnitSystem): string {
  const value = system === 'imperial' ? newtons / N_PER_POUND_FORCE : newtons;
  return `${digits(value, Math.abs(value) >= 10 ? 0 : 1)} ${system === 'imperial' ? 'lbf' : 'N'}`;
}

/** An area given in mm², of the size of a void: square inches or cm². */
export const formatSmallArea = (areaMm2: number, system: UnitSystem): string =>
  system === 'imperial'
    ? `${digits(areaMm2 / MM_PER_INCH ** 2, areaMm2 < 10 * MM_PER_INCH ** 2 ? 2 : 1)} in²`
    : `${digits(areaMm2 / 100, 1)} cm²`;

/** A volume given in mm³, of the size of a squeeze-out: cubic inches or cm³. */
export const formatSmallVolume = (volumeMm3: number, system: UnitSystem): string =>
  system === 'imperial'
    ? `${digits(volumeMm3 / MM_PER_INCH ** 3, 1)} in³`
    : `${digits(volumeMm3 / MM3_PER_CM3, 1)} cm³`;

/** A gauge pressure given in Pa: psi, or kPa. */
export const formatPressure = (pascals: number, system: UnitSystem): string =>
  system === 'imperial' ? `${digits(pascals / PA_PER_PSI, 2)} psi` : `${digits(pascals / 1000, 1)} kPa`;
