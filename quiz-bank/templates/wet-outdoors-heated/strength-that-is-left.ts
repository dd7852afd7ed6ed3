import { valueOf } from '../../../simulations/rules/rulebook.ts';
import type { Say } from '../../engine/say.ts';
import { template } from '../../engine/template.ts';
import { averageHidesIt } from '../../wrong-ideas/average-hides-it.ts';

const bondOf = (strength: number, say: Say): string => say.number(strength, 'stress', say.units === 'imperial' ? 0 : 2);

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
    story: [say.t('story', { kind: say.t(rule) })],
    facts: [
      [say.t('full'), bondOf(full, say)],
      [say.t('bonded'), say.share(share)],
    ],
    ask: say.t('ask'),
    answer: {
      kind: 'number',
      quantity: 'stress',
      value: full * share,
      tolerance: 0.02 * full,
      digits: say.units === 'imperial' ? 0 : 2,
      ideas: [{ idea: averageHidesIt.id, value: full * averageHidesIt.strength() }],
    },
    why: [say.t('why', { share: say.share(share), full: bondOf(full, say), left: bondOf(full * share, say) })],
    rules: ['coverage.strength', rule],
  }),
});
