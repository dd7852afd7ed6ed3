import { feet, inches, type Mm } from './length.ts';

/** Inches as people type them: `12`, `12.5`, `1/4`, `1 1/2`, `1-1/2`; the sign is kept so that it can be refused. */
const number = String.raw`[+-]?\d+(?:[.,]\d+)?`;
const fraction = String.raw`(?:(\d+)[ -])?(\d+)\/(\d+)`;
const plain = new RegExp(`^(${number})$`);
const fractional = new RegExp(`^${fraction}$`);
const units: Record<string, (value: number) => Mm> = {
  mm: (value) => value,
  cm: (value) => value * 10,
  m: (value) => value * 1000,
  in: inches,
  '"': inches,
  '″': inches,
  ft: feet,
  "'": feet,
  '′': feet,
};

function parseNumber(text: string): number | null {
  const mixed = fractional.exec(text);
  if (mixed) {
    const below = Number(mixed[3]);
    return below === 0 ? null : Number(mixed[1] ?? 0) + Number(mixed[2]) / below;
  }
  const simple = plain.exec(text);
  return simple ? Number(simple[1]?.replace(',', '.')) : null;
}

/**
 * Reads a length as a person types it, in the unit written or else the unit the field stands in.
 * @param text for example `12 1/2 in`, `1/4`, `305 mm`, `30,5 cm`, `2 ft`
 * @param fallback the unit when none is written
 * @returns millimetres, or null when the text is not a length
 */
export function parseLength(text: string, fallback: 'mm' | 'in'): Mm | null {
  const trimmed = text.trim().toLowerCase();
  const unit = /(mm|cm|m|in|ft|"|″|'|′)$/.exec(trimmed)?.[1];
  const value = parseNumber((unit ? trimmed.slice(0, -unit.length) : trimmed).trim());
  const convert = units[unit ?? fallback];
  return value === null || !convert ? null : convert(value);
}
