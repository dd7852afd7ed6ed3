import { template } from '../../engine/template.ts';
import { apart } from '../../jobs/apart.ts';
import { METHODS } from '../../runs/methods.ts';
import { baseJobs } from '../../runs/bases.ts';
import { BASES, shelfRun } from '../../runs/shelf.ts';

/** Three backs side by side: put them in order by coverage. */
export const rankThePulls = template({
  id: 'pulling-a-tile/rank-the-pulls',
  outcomes: ['judge-coverage'],
  ideas: [],
  draw: (draw) => {
    const size = baseJobs[draw.whole(0, BASES - 1)];
    const alike = baseJobs.flatMap((job, at) =>
      job.lengthMm === size?.lengthMm && job.widthMm === size.widthMm ? [at] : [],
    );
    const shown = draw.some(METHODS, 3).map((method) => shelfRun(draw.pick(alike), method));
    return apart(
      shown.map(({ coverage }) => coverage),
      0.08,
    )
      ? { shown }
      : null;
  },
  pose: ({ shown }, say) => {
    const places = ['left', 'middle', 'right'];
    const sorted = shown
      .map((run, at) => ({ run, place: places[at] ?? '' }))
      .sort((a, b) => a.run.coverage - b.run.coverage);
    const [first] = shown;
    if (!first) throw new Error('No pulls were drawn.');
    return {
      story: [say.t('story', { tile: say.tile(first.job.lengthMm, first.job.widthMm) })],
      ask: say.t('ask'),
      picture: {
        kind: 'pulls',
        lengthMm: first.job.lengthMm,
        widthMm: first.job.widthMm,
        pulls: shown.map(({ pull }) => pull),
        words: say.t('picture'),
        long: shown
          .map((run, at) =>
            say.t('long', { place: say.t(places[at] ?? ''), share: say.share(Math.round(run.coverage * 20) / 20) }),
          )
          .join(', '),
      },
      answer: {
        kind: 'order',
        steps: sorted.map(({ place }) => say.t(place)),
        first: say.t('least'),
        last: say.t('most'),
        ideas: [],
      },
      why: [
        sorted
          .map(({ run, place }) => say.t('why', { place: say.t(place), share: say.share(run.coverage) }))
          .join(', ') + '.',
      ],
      rules: ['sampling.count-grid'],
    };
  },
});
