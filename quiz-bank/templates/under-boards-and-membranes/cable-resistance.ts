import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';

/** Is the cable still whole, by its resistance? */
export const cableResistance = template({
  id: 'under-boards-and-membranes/cable-resistance',
  outcomes: ['heat-cable'],
  ideas: [],
  draw: (draw) => {
    const label = draw.pick([48, 64, 80, 96, 120]);
    const found = Math.round(label * draw.step(0.8, 1.2, 0.01));
    const off = Math.abs(found / label - 1);
    const limit = valueOf('heat.resistance', 'share');
    return Math.abs(off - limit) < 0.015 || !draw.chance(off > limit ? 1 : 0.8)
      ? null
      : { label, found, off, limit, when: draw.pick(['fixed', 'embedded'] as const) };
  },
  pose: ({ label, found, off, limit, when }, say) => {
    const passes = off <= limit;
    const values = {
      off: say.share(off),
      limit: say.share(limit),
      low: Math.round(label * (1 - limit)),
      high: Math.round(label * (1 + limit)),
    };
    return {
      story: [say.t('story', { label, found, when: say.t(when) })],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: null,
        right: say.t(passes ? 'inside' : 'outside', values),
        wrong: [
          { text: say.t(passes ? 'outside' : 'inside', values), idea: null },
          { text: say.t('warm'), idea: null },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [say.t('why', values), say.t('caution')],
      rules: ['heat.resistance', 'safety.heat'],
    };
  },
});
