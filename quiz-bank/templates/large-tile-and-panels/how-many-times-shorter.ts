import { template } from '../../engine/template.ts';
import { oblong } from '../../jobs/tiles.ts';
import { alongAsGood } from '../../wrong-ideas/along-as-good.ts';

/** How much nearer the open edge is when a long tile is combed the right way. */
export const howManyTimesShorter = template({
  id: 'large-tile-and-panels/how-many-times-shorter',
  outcomes: ['along-the-short-side', 'room-to-slide'],
  ideas: ['along-as-good'],
  draw: (draw) => ({ tile: draw.stock(oblong), wall: draw.chance(0.5) }),
  pose: ({ tile, wall }, say) => {
    const value = tile.lengthMm / tile.widthMm;
    return {
      story: [say.t(wall ? 'story-wall' : 'story-floor', { tile: say.tile(tile.lengthMm, tile.widthMm) })],
      ask: say.t('ask', { long: say.length(tile.lengthMm), short: say.length(tile.widthMm) }),
      answer: {
        kind: 'number',
        quantity: 'times',
        value,
        tolerance: 0.06,
        digits: 1,
        ideas: [{ idea: alongAsGood.id, value: alongAsGood.ratio() }],
      },
      why: [
        say.t('why', {
          long: say.length(tile.lengthMm / 2),
          short: say.length(tile.widthMm / 2),
          value: say.number(value, 'times'),
        }),
      ],
      rules: ['comb.short-side'],
    };
  },
});
