import { template } from '../../engine/template.ts';
import { pullPicture } from '../../jobs/pull-picture.ts';
import { RULED, ruledSquares } from '../../jobs/ruled.ts';
import { BASES, mirrored, shelfRun } from '../../runs/shelf.ts';

/** Shares so near each other look alike. */
const ALIKE = 0.06;

/** Mark the square of a ruled tile that is bonded least. */
export const barestSquare = template({
  id: 'pulling-a-tile/barest-square',
  outcomes: ['voids-and-corners', 'judge-coverage'],
  ideas: [],
  draw: (draw) => {
    const run = mirrored(shelfRun(draw.whole(0, BASES - 1), 'swirl'), draw.chance(0.5), draw.chance(0.5));
    const squares = ruledSquares(run.pull).sort((a, b) => a.wet - b.wet);
    const least = squares[0];
    // Squares that the eye can't tell from the barest one count as well; more than three would be no question.
    const right = squares.filter(({ wet }) => least !== undefined && wet - least.wet <= ALIKE);
    return least && right.length <= 3 ? { run, least, right: right.map(({ cell }) => cell) } : null;
  },
  pose: ({ run, least, right }, say) => ({
    story: [say.t('story', { tile: say.tile(run.job.lengthMm, run.job.widthMm) })],
    ask: say.t('ask'),
    picture: pullPicture(run, say, true),
    answer: { kind: 'mark', columns: RULED.across, rows: RULED.down, right, ideas: [] },
    why: [say.t('why', { cell: least.cell, share: say.share(least.wet) })],
    rules: ['void.tile', 'void.support'],
  }),
});
