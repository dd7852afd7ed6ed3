import { asFraction } from '@sim/units/fraction.ts';
import type { UnitSystem } from '@sim/units/format.ts';
import { inches, toInches } from '@sim/units/length.ts';

import type { Box } from './catalogue.ts';
import { readBox } from './read-box.ts';

const tidy = (value: number): string => String(Math.round(value * 100) / 100);

/** The number that stands in the box in its own unit (in, mm, %, °F …), or null when nothing readable does. */
function standing(box: Box, text: string, units: UnitSystem): number | null {
  const reading = readBox(box, text, units);
  if (reading.state !== 'read' || typeof reading.value !== 'number') return null;
  switch (box.kind) {
    case 'length':
      return units === 'imperial' ? toInches(reading.value) : reading.value;
    case 'share':
      return reading.value * 100;
    case 'temperature':
      return units === 'imperial' ? reading.value * 1.8 + 32 : reading.value;
    default:
      return reading.value;
  }
}

/**
 * The text after one press of a stepper: the next multiple of the box's step, never below zero. From an empty box the
 * first step starts at `start`, in the box's own unit.
 */
export function stepText(box: Box, text: string, units: UnitSystem, direction: 1 | -1, start = 0): string {
  const step = box.step?.[units] ?? 1;
  const from = standing(box, text, units) ?? start;
  const close = 1e-9;
  const multiple =
    direction > 0 ? Math.floor(from / step + close) * step + step : Math.ceil(from / step - close) * step - step;
  const next = Math.max(0, multiple);
  return box.kind === 'length' && units === 'imperial' ? asFraction(inches(next)) : tidy(next);
}
