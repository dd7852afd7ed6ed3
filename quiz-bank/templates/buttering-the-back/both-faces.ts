import { template } from '../../engine/template.ts';
import { drawBearings, sayBearings } from '../../jobs/bearings.ts';
import { alongAsGood } from '../../wrong-ideas/along-as-good.ts';
import { swirlsEvenOut } from '../../wrong-ideas/swirls-even-out.ts';

/** Both faces combed: which way do the ridges on the back run? */
export const bothFaces = template({
  id: 'buttering-the-back/both-faces',
  outcomes: ['both-faces', 'when-to-butter'],
  ideas: ['along-as-good', 'swirls-even-out'],
  draw: (draw) => ({ bearings: drawBearings(draw), told: draw.whole(0, 1) }),
  pose: ({ bearings, told }, say) => {
    const { along, across } = sayBearings(bearings, say);
    return {
      story: [say.t(`story-${told}`, { floor: along })],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: say.t('run', { way: along }),
        wrong: [
          { text: say.t('run', { way: across }), idea: alongAsGood.id },
          { text: say.t('swirl'), idea: swirlsEvenOut.id },
          { text: say.t('diagonal'), idea: alongAsGood.id },
        ],
      },
      why: [say.t('why', { floor: along })],
      rules: ['butter.parallel'],
    };
  },
});
