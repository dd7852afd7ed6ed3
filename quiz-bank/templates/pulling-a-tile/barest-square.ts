import { template } from '../../engine/template.ts';
import { RULED, ruledSquares, squaresInWords } from '../../jobs/ruled.ts';
import { METHODS } from '../../runs/methods.ts';
import { BASES, mirrored, shelfRun } from '../../runs/shelf.ts';

/** Mark the square of a ruled tile that is bonded least. */
export const barestSquare = template({
  id: 'pulling-a-tile/barest-square',
  outcomes: ['voids-and-corners', 'judge-coverage'],
  ideas: [],
  draw: (draw) => {
    const run = mirrored(shelfRun(draw.whole(0, BASES - 1), draw.pick(METHODS)), draw.chance(0.5), draw.chance(0.5));
    const [least, next] = ruledSquares(run.pull).sort((a, b) => a.wet - b.wet);
    return least && next && next.wet - least.wet > 0.06 ? { run, least } : null;
  },
  pose: ({ run, least }, say) => ({
    story: [say.t('story', { tile: say.tile(run.job.lengthMm, run.job.widthMm) })],
    ask: say.t('ask'),
    picture: {
      kind: 'pull',
      lengthMm: run.job.lengthMm,
      widthMm: run.job.widthMm,
      pull: run.pull,
      lettered: true,
      words: say.t('picture'),
      long: squaresInWords(run.pull, say),
    },
    answer: { kind: 'mark', columns: RULED.across, rows: RULED.down, right: [least.cell], ideas: [] },
    why: [say.t('why', { cell: least.cell, share: say.share(least.wet) })],
    rules: ['void.tile', 'void.support'],
  }),
});
