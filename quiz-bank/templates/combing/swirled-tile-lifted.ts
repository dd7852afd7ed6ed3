import { judgePull } from '../../../simulations/judge/judge.ts';
import { template } from '../../engine/template.ts';
import { pullPicture } from '../../jobs/pull-picture.ts';
import { wholePull } from '../../../simulations/judge/whole-pull.ts';
import { BASES, mirrored, shelfRun } from '../../runs/shelf.ts';
import { eightyAnywhere } from '../../wrong-ideas/eighty-anywhere.ts';
import { swirlsEvenOut } from '../../wrong-ideas/swirls-even-out.ts';

/** Three tiles off a bed that was not combed straight: do they pass in this place? */
export const swirledTileLifted = template({
  id: 'combing/swirled-tile-lifted',
  outcomes: ['straight-one-way', 'judge-coverage'],
  ideas: ['eighty-anywhere', 'swirls-even-out'],
  draw: (draw) => {
    const exposure = draw.pick(['interior-dry', 'interior-wet', 'interior-dry'] as const);
    const run = mirrored(
      shelfRun(draw.whole(0, BASES - 1), draw.pick(['swirl', 'crossed'] as const)),
      draw.chance(0.5),
      draw.chance(0.5),
    );
    const shares = [0, draw.pick([-0.01, 0, 0.01]), draw.pick([-0.02, 0.01])].map(
      (off) => Math.round((run.coverage + off) * 100) / 100,
    );
    const mean = shares.reduce((sum, one) => sum + one, 0) / shares.length;
    const { limits, verdict } = judgePull(wholePull({ exposure, pulls: shares.map((coverage) => ({ coverage })) }));
    const required = limits[0]?.required ?? 1;
    // As often one way as the other.
    if (verdict === 'pass' && draw.chance(0.3)) return null;
    return Math.abs(mean - required) < 0.015 || Math.abs(mean - eightyAnywhere.required()) < 0.015
      ? null
      : { exposure, run, shares, mean, required, passes: verdict === 'pass' };
  },
  pose: ({ exposure, run, shares, mean, required, passes }, say) => {
    const reason = (need: number) =>
      say.t(mean >= need ? 'over' : 'under', { mean: say.share(mean), need: say.share(need) });
    const eighty = eightyAnywhere.required();
    return {
      story: [
        say.t('story', {
          tile: say.tile(run.job.lengthMm, run.job.widthMm),
          place: say.t(exposure),
          shares: shares.map(say.share).join(', '),
        }),
      ],
      ask: say.t('ask'),
      picture: pullPicture(run, say, false),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: !passes && required > eighty && mean >= eighty ? eightyAnywhere.id : null,
        right: reason(required),
        wrong: [
          required === eighty ? { text: reason(0.95), idea: null } : { text: reason(eighty), idea: eightyAnywhere.id },
          { text: say.t('swirls'), idea: swirlsEvenOut.id },
        ],
      },
      why: [say.t('why', { mean: say.share(mean), need: say.share(required) }), say.t('why-comb')],
      rules: [required === eighty ? 'coverage.dry' : 'coverage.wet', 'comb.straight', 'sampling.tiles'],
    };
  },
});
