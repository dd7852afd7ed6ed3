import { template } from '../../engine/template.ts';
import { drawBearings, sayBearings } from '../../jobs/bearings.ts';
import { alongAsGood } from '../../wrong-ideas/along-as-good.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';
import { swirlsEvenOut } from '../../wrong-ideas/swirls-even-out.ts';

/** Which way to move a tile that lies on ridges. */
export const moveWhichWay = template({
  id: 'what-the-ridges-are-for/move-which-way',
  outcomes: ['why-ridges', 'across-the-ridges', 'press-and-move'],
  ideas: ['along-as-good', 'pressing-is-enough', 'swirls-even-out'],
  draw: (draw) => ({ bearings: drawBearings(draw), sideMm: draw.size([8, 12, 13, 16]) }),
  pose: ({ bearings, sideMm }, say) => {
    const { along, across } = sayBearings(bearings, say);
    return {
      story: [say.t('story', { tile: say.tile(sideMm, sideMm), ridges: along })],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: say.t('move', { way: across }),
        wrong: [
          { text: say.t('move', { way: along }), idea: alongAsGood.id },
          { text: say.t('press'), idea: pressingIsEnough.id },
          { text: say.t('circles'), idea: swirlsEvenOut.id },
        ],
      },
      why: [say.t('why', { across })],
      rules: ['set.across', 'set.travel'],
    };
  },
});
