import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { square } from '../../jobs/trowels.ts';
import { bagYieldIsMine } from '../../wrong-ideas/bag-yield-is-mine.ts';
import { depthIsTheBed } from '../../wrong-ideas/depth-is-the-bed.ts';

const rates = [
  ['rate.quarter-square', square(1 / 4)],
  ['rate.quarter-three-eighths', square(1 / 4, 3 / 8, 1 / 4)],
  ['rate.half-square', square(1 / 2)],
] as const;

/** Will what was bought do, even at the kindest published rate? */
export const enoughOnTheTruck = template({
  id: 'how-much-to-buy/enough-on-the-truck',
  outcomes: ['headline-rate', 'bags-from-bed'],
  ideas: ['bag-yield-is-mine', 'depth-is-the-bed'],
  draw: (draw) => {
    const [rule, trowel] = draw.pick(rates);
    const areaM2 = draw.floor(draw.step(14, 56, 2));
    const low = Math.ceil(areaM2 / valueOf(rule, 'most'));
    const high = Math.ceil(areaM2 / valueOf(rule, 'least'));
    const bags = draw.chance(0.5) ? high + draw.whole(0, 1) : Math.max(1, low - draw.whole(1, 3));
    return low < 2 || (bags >= low && bags < high)
      ? null
      : { rule, trowel, areaM2, low, high, bags, least: valueOf(rule, 'least'), most: valueOf(rule, 'most') };
  },
  pose: ({ rule, trowel, areaM2, low, high, bags, least, most }, say) => {
    const passes = bags >= high;
    return {
      story: [
        say.t('story', {
          area: say.area(areaM2),
          notch: say.notch(trowel),
          onTruck: say.t(bags === 1 ? 'bag-1' : 'bags-many', { bags }),
        }),
      ],
      facts: [
        [say.t('from'), say.number(least, 'rate', say.units === 'imperial' ? 0 : 1)],
        [say.t('to'), say.number(most, 'rate', say.units === 'imperial' ? 0 : 1)],
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: passes ? null : bagYieldIsMine.id,
        right: say.t(passes ? 'covers' : 'short'),
        wrong: [
          { text: say.t(passes ? 'short' : 'covers'), idea: null },
          { text: say.t('headline'), idea: bagYieldIsMine.id },
          { text: say.t('depth'), idea: depthIsTheBed.id },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [say.t(low === high ? 'why-same' : 'why', { low, high, bags })],
      rules: [rule, 'bags.round-up', 'waste.mortar'],
    };
  },
});
