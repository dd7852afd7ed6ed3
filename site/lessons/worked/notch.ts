import { commonNotches, type CommonNotch } from '@sim/trowel/common-notches.ts';
import { meanBedMm } from '@sim/trowel/notch.ts';
import { formatLength, type UnitSystem } from '@sim/units/format.ts';

/** A common notch by its id ("1-4-3-8-in-square"). @throws when there is none, so that a page with a misspelt one doesn't build */
export function notchById(id: string): CommonNotch {
  const found = commonNotches.find((one) => one.id === id);
  if (!found) throw new Error(`No notch "${id}"; there are ${commonNotches.map((one) => one.id).join(', ')}`);
  return found;
}

/** Bed that a notch leaves with an unworn blade, mm. */
export const bedAt = (notch: CommonNotch, angleDeg: number): number => meanBedMm({ ...notch, angleDeg, wearMm: 0 });

const shapes = { square: 'square', v: 'V', u: 'U', slanted: 'slanted' } as const;

/** A notch's name for a reader in millimetres ("6.4 × 9.5 mm square"). */
export const metricLabel = (notch: CommonNotch): string =>
  `${formatLength(notch.widthMm, 'metric').replace(' mm', '')} × ${formatLength(notch.depthMm, 'metric')} ${shapes[notch.shape]}`;

/** A notch's name in the reader's units. */
export const notchName = (notch: CommonNotch, units: UnitSystem): string =>
  units === 'imperial' ? notch.label : metricLabel(notch);
