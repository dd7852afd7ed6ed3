import { formatArea, formatLength, formatShare, type UnitSystem } from '@sim/units/format.ts';

import type { Box } from './catalogue.ts';
import { readBox } from './read-box.ts';
import { readNumber } from './read-number.ts';

const POUND_KG = 0.45359237;
const tenth = (value: number): string => String(Math.round(value * 10) / 10);

/** A value of the core in the reader's units. */
export function showValue(box: Box, value: number, units: UnitSystem): string {
  switch (box.kind) {
    case 'length':
      return formatLength(value, units);
    case 'area':
      return formatArea(value, units);
    case 'share':
      return formatShare(value);
    case 'weight':
      return units === 'imperial' ? `${tenth(value / POUND_KG)} lb` : `${tenth(value)} kg`;
    case 'temperature':
      return units === 'imperial' ? `${Math.round(value * 1.8 + 32)} °F` : `${Math.round(value)} °C`;
    default:
      return tenth(value);
  }
}

/**
 * What a box was understood to say, where the text alone leaves room for doubt: a unit written with it, two sides of a
 * room, a fraction for a share. Null where the text says it already.
 */
export function echo(box: Box, text: string, units: UnitSystem): string | null {
  const reading = readBox(box, text, units);
  if (reading.state !== 'read' || typeof reading.value !== 'number') return null;
  const plain = readNumber(text).ok && !(box.kind === 'share' && text.includes('/'));
  const shown = showValue(box, reading.value, units);
  return plain || shown === text.trim() ? null : shown;
}
