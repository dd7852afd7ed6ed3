import { template } from '../../engine/template.ts';
import { pullPicture } from '../../jobs/pull-picture.ts';
import { METHODS } from '../../runs/methods.ts';
import { BASES, mirrored, shelfRun } from '../../runs/shelf.ts';

/** Read the coverage of a pulled tile off its ruled picture. */
export const readThePull = template({
  id: 'pulling-a-tile/read-the-pull',
  outcomes: ['judge-coverage'],
  ideas: [],
  draw: (draw) => {
    const run = mirrored(shelfRun(draw.whole(0, BASES - 1), draw.pick(METHODS)), draw.chance(0.5), draw.chance(0.5));
    return run.coverage > 0.97 ? null : { run };
  },
  pose: ({ run }, say) => ({
    story: [say.t('story', { tile: say.tile(run.job.lengthMm, run.job.widthMm) })],
    ask: say.t('ask'),
    picture: pullPicture(run, say, true),
    answer: { kind: 'number', quantity: 'share', value: run.coverage, tolerance: 0.07, digits: 0, ideas: [] },
    why: [say.t('why', { share: say.share(run.coverage) })],
    rules: ['sampling.count-grid', 'coverage.both-faces'],
  }),
});
