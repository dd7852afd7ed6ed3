import { judgePull } from '../../../simulations/judge/judge.ts';
import { template } from '../../engine/template.ts';
import { wholePull } from '../../../simulations/judge/whole-pull.ts';
import { averageHidesIt } from '../../wrong-ideas/average-hides-it.ts';
import { backCoatCounts } from '../../wrong-ideas/back-coat-counts.ts';
import { eightyAnywhere } from '../../wrong-ideas/eighty-anywhere.ts';
import { hollowIsLoose } from '../../wrong-ideas/hollow-is-loose.ts';

/** Tiles lifted, tapped, some of them coated: what is said to the owner, and on what ground? */
export const tellTheOwner = template({
  id: 'pulling-a-tile/tell-the-owner',
  outcomes: ['judge-coverage', 'hollow-sound', 'coat-is-no-contact'],
  ideas: ['average-hides-it', 'back-coat-counts', 'eighty-anywhere', 'hollow-is-loose'],
  draw: (draw) => {
    const exposure = draw.pick(['interior-dry', 'interior-wet'] as const);
    const shares = Array.from({ length: 3 }, () => draw.whole(exposure === 'interior-dry' ? 66 : 84, 99) / 100);
    const { verdict, limits } = judgePull(
      wholePull({ exposure, hollowSound: true, overMembrane: true, pulls: shares.map((coverage) => ({ coverage })) }),
    );
    const required = limits[0]?.required ?? 1;
    const mean = averageHidesIt.mean(shares);
    const clear = [required, eightyAnywhere.required()].every((limit) => Math.abs(mean - limit) > 0.012);
    // As often one way as the other.
    return clear && draw.chance(verdict === 'pass' ? 1 : 0.6)
      ? { exposure, shares, mean, required, passes: verdict === 'pass', mat: draw.chance(0.5) }
      : null;
  },
  pose: ({ exposure, shares, mean, required, passes, mat }, say) => ({
    story: [
      say.t('story', {
        place: say.t(exposure),
        base: say.t(mat ? 'mat' : 'board'),
        shares: shares.map(say.share).join(', '),
      }),
      say.t('coated'),
    ],
    ask: say.t('ask'),
    answer: {
      kind: 'one',
      right: say.t(passes ? 'passes' : 'fails'),
      wrong: [
        {
          text: say.t(passes ? 'fails' : 'passes'),
          idea: !passes && mean >= eightyAnywhere.required() ? eightyAnywhere.id : null,
        },
        { text: say.t('hollow'), idea: hollowIsLoose.id },
        { text: say.t('coats'), idea: backCoatCounts.id },
        { text: say.t('best'), idea: averageHidesIt.id },
      ],
    },
    why: [say.t('why', { mean: say.share(mean), need: say.share(required) }), say.t('why-sound')],
    rules: [exposure === 'interior-dry' ? 'coverage.dry' : 'coverage.wet', 'sampling.sound', 'pull.back-coat-only'],
  }),
});
