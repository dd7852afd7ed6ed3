import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { square } from '../../jobs/trowels.ts';
import { bagYieldIsMine } from '../../wrong-ideas/bag-yield-is-mine.ts';

const rates = [
  ['rate.quarter-square', square(1 / 4)],
  ['rate.quarter-three-eighths', square(1 / 4, 3 / 8, 1 / 4)],
  ['rate.half-square', square(1 / 2)],
] as const;

/** Bags from an area, a rate a crew really gets, and the waste. */
export const bagsForAFloor = template({
  id: 'how-much-to-buy/bags-for-a-floor',
  outcomes: ['bags-from-bed', 'headline-rate'],
  ideas: ['bag-yield-is-mine'],
  draw: (draw) => {
    const [rule, trowel] = draw.pick(rates);
    const least = valueOf(rule, 'least');
    const headline = valueOf(rule, 'most') * 1.1;
    const areaM2 = draw.floor(draw.step(12, 60, 2));
    const waste = draw.pick([valueOf('waste.mortar', 'usual'), valueOf('waste.mortar', 'rough')]);
    const exact = (areaM2 * (1 + waste)) / least;
    const part = exact - Math.floor(exact);
    // A floor that needs a whole number of bags to a hair would leave the rounding to taste.
    return part < 0.12 || part > 0.92 ? null : { rule, trowel, least, headline, areaM2, waste, exact };
  },
  pose: ({ rule, trowel, least, headline, areaM2, waste, exact }, say) => {
    const value = Math.ceil(exact);
    const held = bagYieldIsMine.bags(areaM2, headline);
    return {
      story: [say.t('story', { area: say.area(areaM2), notch: say.notch(trowel) })],
      facts: [
        [say.t('headline'), say.number(headline, 'rate', say.units === 'imperial' ? 0 : 1)],
        [say.t('yours'), say.number(least, 'rate', say.units === 'imperial' ? 0 : 1)],
        [say.t('waste'), say.share(waste)],
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'count',
        value,
        tolerance: 0,
        digits: 0,
        ideas: held === value ? [] : [{ idea: bagYieldIsMine.id, value: held }],
      },
      why: [say.t('why', { exact: exact.toFixed(1), value })],
      rules: [rule, 'waste.mortar', 'bags.round-up'],
    };
  },
});
