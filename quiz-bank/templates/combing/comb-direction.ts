import { template } from '../../engine/template.ts';
import { drawBearings, sayBearings } from '../../jobs/bearings.ts';
import { oblong } from '../../jobs/tiles.ts';
import { alongAsGood } from '../../wrong-ideas/along-as-good.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';
import { swirlsEvenOut } from '../../wrong-ideas/swirls-even-out.ts';

/** Which way to comb for a tile that lies a given way. */
export const combDirection = template({
  id: 'combing/comb-direction',
  outcomes: ['along-the-short-side', 'straight-one-way'],
  ideas: ['along-as-good', 'swirls-even-out', 'pressing-is-enough'],
  draw: (draw) => ({ tile: draw.stock(oblong), bearings: drawBearings(draw), told: draw.whole(0, 1) }),
  pose: ({ tile, bearings, told }, say) => {
    const { along, across } = sayBearings(bearings, say);
    return {
      story: [say.t(`story-${told}`, { tile: say.tile(tile.lengthMm, tile.widthMm), along })],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: say.t('straight', { way: across }),
        wrong: [
          { text: say.t('straight', { way: along }), idea: alongAsGood.id },
          { text: say.t('swirl'), idea: swirlsEvenOut.id },
          { text: say.t('either'), idea: pressingIsEnough.id },
        ],
      },
      why: [say.t('why', { across, half: say.length(tile.widthMm / 2), long: say.length(tile.lengthMm / 2) })],
      rules: ['comb.short-side', 'comb.straight'],
      whyPicture: {
        kind: 'comb',
        ...tile,
        pattern: 'straight',
        directionDeg: 90,
        pitchMm: 25.4,
        lettered: false,
        words: say.t('picture'),
      },
    };
  },
});
