import type { TrowelSetup } from '../../simulations/bed/types.ts';
import { formatSpan } from '../../simulations/units/span.ts';
import { formatArea, formatGap, formatLength, formatShare, type UnitSystem } from '../../simulations/units/format.ts';
import { asFraction } from '../../simulations/units/fraction.ts';
import type { Mm } from '../../simulations/units/length.ts';
import { LITRES_PER_QUART, KG_PER_POUND, type Quantity, unitOf } from './quantity.ts';
import { soldAs } from './sold.ts';

type Values = Record<string, string | number>;
/** Sentences by name, with {holes}. */
export type Words = Record<string, string>;

/** How a template speaks: its own sentences, and amounts in the reader's units. */
export interface Say {
  units: UnitSystem;
  /** One of the template's own sentences, its holes filled. */
  t(name: string, values?: Values): string;
  length(length: Mm, denominator?: number): string;
  gap(length: Mm): string;
  /** A gap that is reckoned with and stands on a tape: the fraction and its decimal, 3/32 in (0.094 in). */
  marked(length: Mm): string;
  /** A length across a floor: feet or metres. */
  span(length: Mm): string;
  area(areaM2: number): string;
  share(share: number): string;
  /** Litres or US quarts. */
  volume(litres: number): string;
  mass(kg: number): string;
  temperature(celsius: number): string;
  /** Width × depth of the notch, and the tooth where it isn't as wide as the gap, with the shape. */
  notch(trowel: TrowelSetup): string;
  /** Two sides of a tile as the trade says them: 12 × 24 in. */
  tile(lengthMm: Mm, widthMm: Mm): string;
  /** A bare number of a quantity with its unit, at most `digits` decimals. */
  number(value: number, quantity: Quantity, digits?: number): string;
}

const trimmed = (value: number, digits: number): string => {
  // Half rounds up as a person would (6.35 is 6.4), whatever the binary form of the number.
  const scale = 10 ** digits;
  const text = (Math.round(value * scale * (1 + Number.EPSILON)) / scale).toFixed(digits);
  return digits > 0 ? text.replace(/\.?0+$/, '') : text;
};

function fill(sentence: string, values: Values, name: string): string {
  return sentence.replace(/\{(\w+)\}/g, (_, hole: string) => {
    const value = values[hole];
    if (value === undefined) throw new Error(`${name}: nothing fills {${hole}}.`);
    return String(value);
  });
}

/**
 * @param words the template's sentences
 * @param shared sentences every template may use (shapes of a notch, places)
 * @throws when a sentence or the filling of a hole is missing; the bank's tests walk every template
 */
export function speaker(units: UnitSystem, name: string, words: Words, shared: Words): Say {
  const imperial = units === 'imperial';
  const t = (key: string, values: Values = {}): string => {
    const sentence = words[key] ?? shared[key];
    if (sentence === undefined) throw new Error(`${name}: no sentence "${key}".`);
    return fill(sentence, values, `${name} "${key}"`);
  };
  const number = (value: number, quantity: Quantity, digits = 1): string => {
    const unit = unitOf(quantity, units);
    const text = trimmed(value / unit.base, digits);
    return unit.name === '' ? text : unit.name === '×' ? `${text}×` : `${text} ${unit.name}`;
  };
  return {
    units,
    t,
    number,
    length: (length, denominator) => formatLength(length, units, denominator),
    gap: (length) => formatGap(length, units),
    marked: (length) =>
      imperial ? `${formatLength(length, units)} (${formatGap(length, units)})` : formatGap(length, units),
    span: (length) => formatSpan(length, units),
    area: (areaM2) => formatArea(areaM2, units),
    share: formatShare,
    volume: (litres) => {
      const amount = imperial ? litres / LITRES_PER_QUART : litres;
      // A jug is read to a hundredth when little is in it, to a tenth when much is.
      return `${trimmed(amount, amount < 3 ? 2 : 1)} ${imperial ? 'qt' : 'L'}`;
    },
    mass: (kg) =>
      imperial
        ? // A bag is weighed to half a pound.
          `${kg < 20 * KG_PER_POUND ? trimmed(kg / KG_PER_POUND, 1) : trimmed(Math.round((kg / KG_PER_POUND) * 2) / 2, 1)} lb`
        : `${trimmed(kg, 1)} kg`,
    temperature: (celsius) => (imperial ? `${trimmed((celsius * 9) / 5 + 32, 0)} °F` : `${trimmed(celsius, 0)} °C`),
    notch: ({ shape, widthMm, depthMm, toothMm }) => {
      const sizes = shape === 'v' || toothMm === widthMm ? [widthMm, depthMm] : [widthMm, depthMm, toothMm];
      const texts = sizes.map((size) => (imperial ? asFraction(size, 32) : trimmed(soldAs(units, size), 1)));
      return t(`notch-${shape}`, { size: `${texts.join(' × ')} ${imperial ? 'in' : 'mm'}` });
    },
    tile: (lengthMm, widthMm) =>
      imperial
        ? `${asFraction(lengthMm, 16)} × ${asFraction(widthMm, 16)} in`
        : `${trimmed(soldAs(units, lengthMm), 0)} × ${trimmed(soldAs(units, widthMm), 0)} mm`,
  };
}
