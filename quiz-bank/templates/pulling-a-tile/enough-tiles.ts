import { judgePull } from '../../../simulations/judge/judge.ts';
import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { wholePull } from '../../../simulations/judge/whole-pull.ts';
import { averageHidesIt } from '../../wrong-ideas/average-hides-it.ts';
import { eightyAnywhere } from '../../wrong-ideas/eighty-anywhere.ts';

/** One, two or three tiles are up: is that a verdict yet? */
export const enoughTiles = template({
  id: 'pulling-a-tile/enough-tiles',
  outcomes: ['how-many-to-lift', 'judge-coverage'],
  ideas: ['average-hides-it', 'eighty-anywhere'],
  draw: (draw) => {
    const exposure = draw.pick(['interior-dry', 'interior-wet'] as const);
    const count = draw.pick([1, 2, 2, 3, 3]);
    const base = exposure === 'interior-dry' ? [20, 55, 70][count - 1] : [70, 80, 86][count - 1];
    const shares = Array.from({ length: count }, () => draw.whole(base ?? 0, 99) / 100);
    const { verdict, limits } = judgePull(wholePull({ exposure, pulls: shares.map((coverage) => ({ coverage })) }));
    const least = valueOf('sampling.tiles', 'tiles');
    const required = limits[0]?.required ?? 1;
    const mean = averageHidesIt.mean(shares);
    if (shares.some((share) => Math.abs(share - required) < 0.015) || Math.abs(mean - required) < 0.015) return null;
    // Too few tiles fail only where full ones after them could not bring the average of three up.
    const atBest =
      (shares.reduce((sum, share) => sum + share, 0) + Math.max(0, least - count)) / Math.max(least, count);
    if (verdict === 'fail' && count < least && atBest > required - 0.015) return null;
    return { exposure, shares, verdict, required, mean };
  },
  pose: ({ exposure, shares, verdict, required, mean }, say) => {
    const holder = averageHidesIt.passes(shares, required) ? 'pass' : 'fail';
    const eighty = averageHidesIt.passes(shares, eightyAnywhere.required()) ? 'pass' : 'fail';
    return {
      story: [
        say.t(`story-${Math.min(shares.length, 3)}`, {
          place: say.t(exposure),
          shares: shares.map(say.share).join(', '),
        }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: say.t(verdict),
        wrong: (['pass', 'fail', 'not-enough'] as const)
          .filter((one) => one !== verdict)
          .map((one) => ({
            text: say.t(one),
            // Three good tiles on the average of a wet place that only reach the dry share: that is the dry share talking.
            idea: one === eighty && one !== holder ? eightyAnywhere.id : one === holder ? averageHidesIt.id : null,
          })),
      },
      why: [
        say.t(`why-${verdict}${verdict === 'fail' && shares.length < 3 ? '-early' : ''}`, {
          need: say.share(required),
          mean: say.share(mean),
        }),
      ],
      rules: ['sampling.tiles', exposure === 'interior-dry' ? 'coverage.dry' : 'coverage.wet'],
    };
  },
});
