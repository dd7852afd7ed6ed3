import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { averageHidesIt } from '../../wrong-ideas/average-hides-it.ts';

/** Bond of the whole tile when only a part of its back is bonded. */
export const strengthThatIsLeft = template({
  id: 'wet-outdoors-heated/strength-that-is-left',
  outcomes: ['coverage-by-place', 'what-coverage-is'],
  ideas: ['average-hides-it'],
  draw: (draw) => {
    const rule = draw.pick(['class.a118-1', 'class.a118-4', 'class.a118-15'] as const);
    return { rule, full: valueOf(rule, 'strength'), share: draw.step(0.4, 0.9, 0.05) };
  },
  pose: ({ rule, full, share }, say) => ({
    story: [say.t('story', { kind: say.t(rule), share: say.share(share) })],
    ask: say.t('ask'),
    answer: {
      kind: 'number',
      quantity: 'share',
      value: share,
      tolerance: 0.02,
      digits: 0,
      ideas: [{ idea: averageHidesIt.id, value: averageHidesIt.strength() }],
    },
    why: [say.t('why', { share: say.share(share), full: full.toFixed(2), left: (full * share).toFixed(2) })],
    rules: ['coverage.strength', rule],
  }),
});
