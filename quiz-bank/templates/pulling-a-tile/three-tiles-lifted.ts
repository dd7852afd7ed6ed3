import { judgePull } from '../../../simulations/judge/judge.ts';
import { template } from '../../engine/template.ts';
import { wholePull } from '../../../simulations/judge/whole-pull.ts';
import { averageHidesIt } from '../../wrong-ideas/average-hides-it.ts';
import { eightyAnywhere } from '../../wrong-ideas/eighty-anywhere.ts';

/** In², the way a void is measured on site. */
const SQUARE_INCH = 645.16;

/** Three lifted tiles, one with a void: pass or fail, and which rule decides. */
export const threeTilesLifted = template({
  id: 'pulling-a-tile/three-tiles-lifted',
  outcomes: ['voids-and-corners', 'judge-coverage'],
  ideas: ['average-hides-it', 'eighty-anywhere'],
  draw: (draw) => {
    const exposure = draw.pick(['interior-dry', 'interior-dry', 'interior-wet'] as const);
    const shares = Array.from({ length: 3 }, () => draw.whole(exposure === 'interior-dry' ? 74 : 88, 99) / 100);
    const mean = averageHidesIt.mean(shares);
    const atEdge = draw.chance(0.5);
    const voidIn2 = draw.pick([0.5, 1, 3, 4, 5]);
    const pull = wholePull({
      exposure,
      pulls: shares.map((coverage, at) => ({
        coverage,
        voids:
          at === 1
            ? [{ areaMm2: voidIn2 * SQUARE_INCH, toCornerMm: atEdge ? 40 : 130, toEdgeMm: atEdge ? 0 : 110 }]
            : [],
      })),
    });
    const { verdict, limits } = judgePull(pull);
    const required = limits.find(({ name }) => name === 'coverage')?.required ?? 1;
    const edge = limits.find(({ name }) => name === 'edge-support');
    const edgeFails = edge ? !edge.holds : false;
    // One reason decides: a tile that fails on both counts would have two.
    if (Math.abs(mean - required) < 0.012 || Math.abs(mean - eightyAnywhere.required()) < 0.012) return null;
    if (edgeFails && mean < required) return null;
    return draw.chance(edgeFails ? 1 : 0.6)
      ? { exposure, shares, mean, required, atEdge, voidIn2, edgeFails, passes: verdict === 'pass' }
      : null;
  },
  pose: ({ exposure, shares, mean, required, atEdge, voidIn2, edgeFails, passes }, say) => {
    const area = say.units === 'imperial' ? `${voidIn2} in²` : `${Math.round((voidIn2 * SQUARE_INCH) / 10) * 10} mm²`;
    const values = {
      mean: say.share(mean),
      need: say.share(required),
      area,
      eighty: say.share(eightyAnywhere.required()),
    };
    const right = edgeFails ? 'edge' : mean >= required ? 'over' : 'under';
    const wet = required > eightyAnywhere.required();
    return {
      story: [
        say.t('story', { place: say.t(exposure), shares: shares.map(say.share).join(', ') }),
        say.t(atEdge ? 'void-edge' : 'void-middle', values),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: edgeFails
          ? averageHidesIt.id
          : !passes && wet && mean >= eightyAnywhere.required()
            ? eightyAnywhere.id
            : null,
        right: say.t(right, values),
        wrong: [
          ...['over', 'under', 'edge']
            .filter((one) => one !== right)
            .map((one) => ({ text: say.t(one, values), idea: one === 'over' && edgeFails ? averageHidesIt.id : null })),
          wet
            ? { text: say.t('eighty', values), idea: eightyAnywhere.id }
            : { text: say.t('best', values), idea: averageHidesIt.id },
        ],
      },
      why: [say.t(`why-${right}`, values)],
      rules: [wet ? 'coverage.wet' : 'coverage.dry', 'void.support', 'sampling.tiles'],
    };
  },
});
