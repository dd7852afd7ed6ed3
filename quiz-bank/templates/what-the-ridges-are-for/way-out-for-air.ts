import { template } from '../../engine/template.ts';
import { drawBearings, sayBearings } from '../../jobs/bearings.ts';
import { oblong } from '../../jobs/tiles.ts';
import { alongAsGood } from '../../wrong-ideas/along-as-good.ts';
import { swirlsEvenOut } from '../../wrong-ideas/swirls-even-out.ts';

/** How far the air at the middle of a tile must travel in its valley. */
export const wayOutForAir = template({
  id: 'what-the-ridges-are-for/way-out-for-air',
  outcomes: ['why-ridges', 'where-air-goes', 'along-the-short-side'],
  ideas: ['along-as-good', 'swirls-even-out'],
  draw: (draw) => ({ tile: draw.stock(oblong), bearings: drawBearings(draw), ridgesAlongLong: draw.chance(0.5) }),
  pose: ({ tile, bearings, ridgesAlongLong }, say) => {
    const { along, across } = sayBearings(bearings, say);
    const side = ridgesAlongLong ? tile.lengthMm : tile.widthMm;
    const other = alongAsGood.otherSide(tile, side);
    return {
      story: [
        say.t('story', {
          tile: say.tile(tile.lengthMm, tile.widthMm),
          long: along,
          ridges: ridgesAlongLong ? along : across,
        }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: say.length(side / 2),
        wrong: [
          { text: say.length(other / 2), idea: alongAsGood.id },
          { text: say.t('none'), idea: swirlsEvenOut.id },
          { text: say.length(side), idea: null },
        ],
      },
      why: [
        say.t('why', { side: say.length(side), half: say.length(side / 2) }),
        say.t(ridgesAlongLong ? 'why-long' : 'why-short', { other: say.length(other / 2) }),
      ],
      rules: ['comb.short-side', 'comb.straight'],
      whyPicture: {
        kind: 'comb',
        lengthMm: tile.lengthMm,
        widthMm: tile.widthMm,
        pattern: 'straight',
        directionDeg: ridgesAlongLong ? 0 : 90,
        pitchMm: 25.4,
        lettered: false,
        words: say.t(ridgesAlongLong ? 'picture-long' : 'picture-short'),
      },
    };
  },
});
