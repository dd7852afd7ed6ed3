import type { RuleId } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { drawBearings, sayBearings } from '../../jobs/bearings.ts';
import { oblong } from '../../jobs/tiles.ts';

const steps = ['key', 'line', 'straight', 'move'] as const;
const rules: Record<(typeof steps)[number], RuleId> = {
  key: 'comb.key-coat',
  line: 'comb.to-the-line',
  straight: 'comb.straight',
  move: 'set.across',
};

/** Watch someone comb and set: which step is missing? */
export const whatWasLeftOut = template({
  id: 'combing/what-was-left-out',
  outcomes: ['key-coat-first', 'straight-one-way', 'press-and-move'],
  ideas: [],
  draw: (draw) => ({ tile: draw.stock(oblong), bearings: drawBearings(draw), missing: draw.pick(steps) }),
  pose: ({ tile, bearings, missing }, say) => {
    const ways = sayBearings(bearings, say);
    return {
      story: [
        say.t('story', {
          tile: say.tile(tile.lengthMm, tile.widthMm),
          along: ways.along,
          steps: steps.map((step) => say.t(`${step === missing ? 'not' : 'did'}-${step}`, ways)).join(' '),
        }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: say.t(missing),
        wrong: steps.filter((step) => step !== missing).map((step) => ({ text: say.t(step), idea: null })),
      },
      why: [say.t(`why-${missing}`)],
      rules: [rules[missing]],
    };
  },
});
