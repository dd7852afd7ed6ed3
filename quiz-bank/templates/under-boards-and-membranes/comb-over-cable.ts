import { template } from '../../engine/template.ts';
import { drawBearings, sayBearings } from '../../jobs/bearings.ts';
import { oblong } from '../../jobs/tiles.ts';
import { alongAsGood } from '../../wrong-ideas/along-as-good.ts';
import { oneChartForAll } from '../../wrong-ideas/one-chart-for-all.ts';
import { swirlsEvenOut } from '../../wrong-ideas/swirls-even-out.ts';

/** Combing over a heating cable. */
export const combOverCable = template({
  id: 'under-boards-and-membranes/comb-over-cable',
  outcomes: ['heat-cable', 'whose-instructions'],
  ideas: ['one-chart-for-all', 'along-as-good', 'swirls-even-out'],
  draw: (draw) => ({ tile: draw.stock(oblong), bearings: drawBearings(draw), cableAlongTile: draw.chance(0.6) }),
  pose: ({ tile, bearings, cableAlongTile }, say) => {
    const { along, across } = sayBearings(bearings, say);
    const cable = cableAlongTile ? along : across;
    const other = cableAlongTile ? across : along;
    return {
      story: [say.t('story', { tile: say.tile(tile.lengthMm, tile.widthMm), along, cable })],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: say.t('plastic', { way: cable }),
        wrong: [
          // The short side is the rule elsewhere; over cable it isn't the one that counts.
          { text: say.t('plastic', { way: other }), idea: cableAlongTile ? oneChartForAll.id : alongAsGood.id },
          { text: say.t('steel', { way: cable }), idea: null },
          { text: say.t('swirl'), idea: swirlsEvenOut.id },
        ],
      },
      why: [say.t('why', { cable }), say.t('caution')],
      rules: ['comb.cable', 'heat.protect', 'safety.heat'],
    };
  },
});
