import { feet, inches, type Mm } from './length.ts';

/** Numbers as people type them: `12`, `12.5`, `.125`, `1/4`, `1 1/2`, `1-1/2`; the sign is kept so that it can be refused. */
const plain = /^[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)$/;
/** Half the world reads `1,200` as twelve hundred, the other half as one and a fifth. */
const either = /^[+-]?[1-9]\d{0,2},\d{3}$/;
const fractional = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/;
const vulgar: Record<string, string> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

const metres = (value: number): Mm => value * 1000;
const units: Record<string, (value: number) => Mm> = {
  mm: (value) => value,
  cm: (value) => value * 10,
  m: metres,
  metre: metres,
  metres: metres,
  meter: metres,
  meters: metres,
  in: inches,
  inch: inches,
  inches: inches,
  '"': inches,
  '″': inches,
  '”': inches,
  "''": inches,
  ft: feet,
  foot: feet,
  feet: feet,
  "'": feet,
  '′': feet,
  '’': feet,
};
/** Longest first, so that `mm` is not taken for `m`. */
const names = Object.keys(units).sort((a, b) => b.length - a.length);

const feetAndInches = /^(\d+) ?(?:ft|feet|foot|'(?!')|′|’)[ -]*(\d.*)$/;

function parseNumber(text: string): number | null {
  const mixed = fractional.exec(text);
  if (mixed) {
    const below = Number(mixed[3]);
    return below === 0 ? null : Number(mixed[1] ?? 0) + Number(mixed[2]) / below;
  }
  return plain.test(text) && !either.test(text) ? Number(text.replace(',', '.')) : null;
}

function inOneUnit(text: string, fallback: string): Mm | null {
  const unit = names.find((name) => text.endsWith(name));
  const value = parseNumber((unit ? text.slice(0, -unit.length) : text).trim());
  const convert = units[unit ?? fallback];
  return value === null || !convert ? null : convert(value);
}

/**
 * Reads a length as a person types it, in the unit written or else the unit the field stands in.
 * @param text for example `12 1/2 in`, `1/4`, `12' 6"`, `305 mm`, `30,5 cm`, `2 feet`
 * @param fallback the unit when none is written
 * @returns millimetres, or null when the text is not a length
 */
export function parseLength(text: string, fallback: 'mm' | 'in'): Mm | null {
  const tidy = text
    .toLowerCase()
    .replace(/[¼½¾⅛⅜⅝⅞]/g, (sign) => ` ${vulgar[sign] ?? ''}`)
    .replace(/\s+/g, ' ')
    .trim();
  const [, whole, rest] = feetAndInches.exec(tidy) ?? [];
  if (whole === undefined || rest === undefined) return inOneUnit(tidy, fallback);
  // Behind the feet stand inches and nothing else.
  const over = /(?:m|ft|feet|foot)$/.test(rest) ? null : inOneUnit(rest, 'in');
  return over === null || over >= feet(1) ? null : feet(Number(whole)) + over;
}
