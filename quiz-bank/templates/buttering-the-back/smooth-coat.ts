import { judgePull } from '../../../simulations/judge/judge.ts';
import { template } from '../../engine/template.ts';
import { wholePull } from '../../../simulations/judge/whole-pull.ts';
import { averageHidesIt } from '../../wrong-ideas/average-hides-it.ts';
import { hollowIsLoose } from '../../wrong-ideas/hollow-is-loose.ts';
import { backCoatCounts } from '../../wrong-ideas/back-coat-counts.ts';

/** Three backs, some of them coated and never in the bed. */
export const smoothCoat = template({
  id: 'buttering-the-back/smooth-coat',
  outcomes: ['coat-is-no-contact', 'judge-coverage'],
  ideas: ['back-coat-counts', 'average-hides-it', 'hollow-is-loose'],
  draw: (draw) => {
    const pulls = Array.from({ length: 3 }, () => {
      const backCoatOnly = draw.chance(0.3);
      return { backCoatOnly, coverage: backCoatOnly ? 1 : draw.whole(72, 99) / 100 };
    });
    const { verdict, limits } = judgePull(wholePull({ pulls }));
    const limit = limits[0];
    const counted = pulls.reduce((sum, pull) => sum + backCoatCounts.coverage(pull), 0) / 3;
    if (!limit || limit.found === null || Math.abs(limit.found - limit.required) < 0.02) return null;
    if (!pulls.some(({ backCoatOnly }) => backCoatOnly) && draw.chance(0.5)) return null;
    // Most such floors fail; the others are drawn more often, or one answer would always do.
    if (verdict !== 'pass' && draw.chance(0.78)) return null;
    return { pulls, mean: limit.found, required: limit.required, counted, passes: verdict === 'pass' };
  },
  pose: ({ pulls, mean, required, counted, passes }, say) => {
    const coated = pulls.some(({ backCoatOnly }) => backCoatOnly);
    return {
      story: [
        say.t('story'),
        pulls
          .map(({ backCoatOnly, coverage }, at) => {
            const which = say.t(`tile-${at + 1}`);
            return backCoatOnly ? say.t('smooth', { which }) : say.t('printed', { which, share: say.share(coverage) });
          })
          .join(' '),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: !passes && coated ? backCoatCounts.id : null,
        right: say.t(mean >= required ? 'over' : 'under'),
        wrong: [
          { text: say.t(mean >= required ? 'under' : 'over'), idea: null },
          { text: say.t(counted >= required ? 'coat-over' : 'coat-under'), idea: backCoatCounts.id },
          { text: say.t('best'), idea: averageHidesIt.id },
          { text: say.t('solid'), idea: hollowIsLoose.id },
        ],
      },
      why: [say.t(coated ? 'why-coated' : 'why', { mean: say.share(mean), need: say.share(required) })],
      rules: ['pull.back-coat-only', 'coverage.both-faces', 'coverage.dry'],
    };
  },
});
