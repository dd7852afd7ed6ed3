import type { Item } from '@quiz/engine/item.ts';
import { readNumber } from '@quiz/engine/read-number.ts';

/** A number with the unit it was asked in, so that the answer reads the same after the units are switched. */
export function withUnit({ form }: Item, text: string): string {
  if (form.kind !== 'number' || form.unit === '') return text;
  const number = readNumber(text);
  return number.ok && number.unit === null ? `${text.trim()} ${form.unit}` : text;
}
