import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { backCoatCounts } from '../../wrong-ideas/back-coat-counts.ts';
import { bagYieldIsMine } from '../../wrong-ideas/bag-yield-is-mine.ts';

/** Bags when the backs are coated. */
export const coatInTheCount = template({
  id: 'how-much-to-buy/coat-in-the-count',
  outcomes: ['every-layer', 'when-to-butter'],
  ideas: ['back-coat-counts', 'bag-yield-is-mine'],
  draw: (draw) => {
    const bedBags = draw.whole(6, 20);
    const share = draw.step(valueOf('butter.extra', 'least'), valueOf('butter.extra', 'most'), 0.05);
    const waste = valueOf('waste.mortar', 'usual');
    const exact = bedBags * (1 + share) * (1 + waste);
    const part = exact - Math.floor(exact);
    return part < 0.1 || part > 0.95 ? null : { bedBags, share, waste, exact };
  },
  pose: ({ bedBags, share, waste, exact }, say) => {
    const value = Math.ceil(exact);
    const noCoat = Math.ceil(bedBags * (1 + backCoatCounts.extra()) * (1 + waste));
    return {
      story: [say.t('story', { bags: bedBags })],
      facts: [
        [say.t('coat'), say.share(share)],
        [say.t('waste'), say.share(waste)],
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'count',
        value,
        tolerance: 0,
        digits: 0,
        ideas: [
          ...(noCoat === value ? [] : [{ idea: backCoatCounts.id, value: noCoat }]),
          ...(bedBags === noCoat ? [] : [{ idea: bagYieldIsMine.id, value: bedBags }]),
        ],
      },
      why: [
        say.t('why', {
          bags: bedBags,
          coat: say.share(share),
          waste: say.share(waste),
          exact: exact.toFixed(1),
          value,
        }),
      ],
      rules: ['butter.extra', 'waste.mortar', 'bags.round-up'],
    };
  },
});
