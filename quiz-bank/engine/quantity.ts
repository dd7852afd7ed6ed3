import type { UnitSystem } from '../../simulations/units/format.ts';
import { MM_PER_INCH } from '../../simulations/units/length.ts';
import { squareFeet } from '../../simulations/units/length.ts';

/** What kind of number is asked for. Base units: mm, share 0…1, m², litres, kg, N/mm², minutes (for hours too), and plain counts. */
export type Quantity =
  'length' | 'gap' | 'share' | 'area' | 'volume' | 'mass' | 'stress' | 'rate' | 'minutes' | 'hours' | 'count' | 'times';

/** 0.45359237 kg exactly (international yard and pound agreement, 1959). */
export const KG_PER_POUND = 0.45359237;
/** A pound-force on a square inch, N/mm². */
const NEWTONS_PER_PSI = (KG_PER_POUND * 9.80665) / MM_PER_INCH ** 2;
/** A US liquid quart: 57.75 in³ exactly. */
export const LITRES_PER_QUART = (57.75 * MM_PER_INCH ** 3) / 1e6;

interface Unit {
  name: string;
  /** One of this unit in the base unit. */
  base: number;
}

const same = (name: string, base = 1): Record<UnitSystem, Unit> => ({
  imperial: { name, base },
  metric: { name, base },
});

const units: Record<Quantity, Record<UnitSystem, Unit>> = {
  length: { imperial: { name: 'in', base: MM_PER_INCH }, metric: { name: 'mm', base: 1 } },
  gap: { imperial: { name: 'in', base: MM_PER_INCH }, metric: { name: 'mm', base: 1 } },
  share: same('%', 0.01),
  area: { imperial: { name: 'ft²', base: squareFeet(1) }, metric: { name: 'm²', base: 1 } },
  volume: { imperial: { name: 'qt', base: LITRES_PER_QUART }, metric: { name: 'L', base: 1 } },
  mass: { imperial: { name: 'lb', base: KG_PER_POUND }, metric: { name: 'kg', base: 1 } },
  stress: { imperial: { name: 'psi', base: NEWTONS_PER_PSI }, metric: { name: 'N/mm²', base: 1 } },
  // Area one bag covers.
  rate: { imperial: { name: 'ft² a bag', base: squareFeet(1) }, metric: { name: 'm² a bag', base: 1 } },
  minutes: same('min'),
  hours: same('h', 60),
  count: same(''),
  times: same('×'),
};

/** The unit a quantity is asked in; its name is empty for counts. */
export const unitOf = (quantity: Quantity, system: UnitSystem): Unit => units[quantity][system];
