import { KG_PER_POUND, LITRES_PER_QUART } from '../../engine/quantity.ts';
import { template } from '../../engine/template.ts';
import { waterBringsItBack } from '../../wrong-ideas/water-brings-it-back.ts';

interface Bag {
  bagKg: number;
  /** Water the sheet gives for the whole bag, from and to, L. */
  least: number;
  most: number;
  /** Powder weighed out, kg. */
  parts: number[];
}
const bag = (bagKg: number, least: number, most: number, parts: number[]): Bag => ({ bagKg, least, most, parts });
const inPounds = (pounds: number, least: number, most: number, parts: number[]): Bag =>
  bag(
    pounds * KG_PER_POUND,
    least * LITRES_PER_QUART,
    most * LITRES_PER_QUART,
    parts.map((part) => part * KG_PER_POUND),
  );
/** Invented sheets, between what the rule on water gives. */
const kilograms = [
  bag(20, 4, 4.8, [5, 8, 10, 12.5, 15]),
  bag(20, 4.8, 5.6, [5, 8, 10, 15]),
  bag(25, 5, 6, [5, 10, 12.5, 15]),
  bag(25, 6, 7, [5, 8, 10, 15]),
];
const pounds = [
  inPounds(50, 5, 6, [10, 12.5, 20, 25, 35]),
  inPounds(50, 5.5, 6.5, [10, 20, 25, 40]),
  inPounds(50, 6, 7, [10, 15, 25, 30]),
];

/** Is the water in the bucket inside what the sheet allows for this much powder? */
export const enoughWater = template({
  id: 'mixing/enough-water',
  outcomes: ['part-bag', 'water-and-rest'],
  ideas: ['water-brings-it-back'],
  draw: (draw) => {
    const { bagKg, least, most, parts } = draw.pick(draw.units === 'imperial' ? pounds : kilograms);
    const partKg = draw.pick(parts);
    const jug = draw.units === 'imperial' ? LITRES_PER_QUART / 10 : 1 / 20;
    const pouredL = Math.round((draw.step(0.7, 1.5, 0.05) * (least / bagKg) * partKg) / jug) * jug;
    const low = (least * partKg) / bagKg;
    const high = (most * partKg) / bagKg;
    const clear = [low, high].every((limit) => Math.abs(pouredL / limit - 1) > 0.06);
    return clear ? { bagKg, least, most, partKg, pouredL, low, high } : null;
  },
  pose: ({ bagKg, least, most, partKg, pouredL, low, high }, say) => {
    const passes = pouredL >= low && pouredL <= high;
    const limits = {
      low: say.volume(low),
      high: say.volume(high),
      bagLow: say.volume(least),
      bagHigh: say.volume(most),
    };
    const verdict = passes ? 'inside' : pouredL < low ? 'short' : 'over';
    const others = ['inside', 'short', 'over'].filter((one) => one !== verdict);
    return {
      story: [say.t('story', { bag: say.mass(bagKg), ...limits, part: say.mass(partKg), poured: say.volume(pouredL) })],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: verdict === 'over' ? waterBringsItBack.id : null,
        right: say.t(verdict, limits),
        wrong: [
          ...others.map((one) => ({ text: say.t(one, limits), idea: null })),
          { text: say.t('easier'), idea: waterBringsItBack.id },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [say.t('why', { ...limits, part: say.mass(partKg), poured: say.volume(pouredL) })],
      rules: ['mortar.part-bag', 'mortar.water'],
    };
  },
});
