import { template } from '../../engine/template.ts';
import { even, oblong } from '../../jobs/tiles.ts';
import { backCoatCounts } from '../../wrong-ideas/back-coat-counts.ts';

const edges = ['one-long', 'both-long', 'two-meeting', 'all'] as const;

/** The best coverage that is left when mortar is kept back from the line. */
export const bareStrip = template({
  id: 'combing/bare-strip',
  outcomes: ['voids-and-corners', 'what-coverage-is'],
  ideas: ['back-coat-counts'],
  draw: (draw) => {
    const tile = draw.stock([...even, ...oblong]);
    const bareMm = draw.size([1 / 4, 1 / 2, 3 / 4, 1]);
    const which = draw.pick(edges);
    const { lengthMm: l, widthMm: w } = tile;
    const length = l - (which === 'two-meeting' ? bareMm : which === 'all' ? 2 * bareMm : 0);
    const width = w - (which === 'one-long' || which === 'two-meeting' ? bareMm : 2 * bareMm);
    const best = (length * width) / (l * w);
    return best < 0.6 || best > 0.96 ? null : { tile, bareMm, which, length, width, best };
  },
  pose: ({ tile, bareMm, which, length, width, best }, say) => ({
    story: [
      say.t('story', { tile: say.tile(tile.lengthMm, tile.widthMm), bare: say.length(bareMm), edges: say.t(which) }),
    ],
    ask: say.t('ask'),
    answer: {
      kind: 'number',
      quantity: 'share',
      value: best,
      tolerance: 0.01,
      digits: 1,
      ideas: [{ idea: backCoatCounts.id, value: backCoatCounts.coverage({ coverage: best, backCoatOnly: true }) }],
    },
    why: [
      say.t('why', {
        tile: say.tile(tile.lengthMm, tile.widthMm),
        left: say.tile(length, width),
        best: say.number(best, 'share'),
      }),
      say.t('why-edge'),
    ],
    rules: ['comb.to-the-line', 'void.support'],
  }),
});
