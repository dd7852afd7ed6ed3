import { judgePull } from '../../../simulations/judge/judge.ts';
import { template } from '../../engine/template.ts';
import { wholePull } from '../../../simulations/judge/whole-pull.ts';
import { averageHidesIt } from '../../wrong-ideas/average-hides-it.ts';
import { eightyAnywhere } from '../../wrong-ideas/eighty-anywhere.ts';

const SQUARE_INCH = 645.16;

/** Gauged panels lifted from a floor or a wall. */
export const panelLifted = template({
  id: 'large-tile-and-panels/panel-lifted',
  outcomes: ['panel-embedding', 'voids-and-corners', 'coverage-by-place'],
  ideas: ['average-hides-it', 'eighty-anywhere'],
  draw: (draw) => {
    const surface = draw.pick(['floor', 'wall'] as const);
    const shares = Array.from({ length: 3 }, () => draw.whole(74, 97) / 100);
    const voidIn2 = draw.pick([0.5, 1, 1.5, 3, 4]);
    const pull = wholePull({
      surface,
      kind: 'panel',
      thicknessMm: 5.6,
      pulls: shares.map((coverage, at) => ({
        coverage,
        voids: at === 0 ? [{ areaMm2: voidIn2 * SQUARE_INCH, toCornerMm: 300, toEdgeMm: 250 }] : [],
      })),
    });
    const { verdict, limits } = judgePull(pull);
    const coverage = limits.find(({ name }) => name === 'coverage');
    const large = limits.find(({ name }) => name === 'largest-void');
    if (!coverage || !large) return null;
    const { found, required } = coverage;
    if (found === null) return null;
    if (Math.abs(found - required) < 0.012 || Math.abs(found - eightyAnywhere.required()) < 0.012) return null;
    if (!large.holds && !coverage.holds) return null;
    return draw.chance(large.holds ? 0.7 : 1)
      ? {
          surface,
          shares,
          voidIn2,
          mean: found,
          required,
          limitIn2: large.required / SQUARE_INCH,
          big: !large.holds,
          passes: verdict === 'pass',
        }
      : null;
  },
  pose: ({ surface, shares, voidIn2, mean, required, limitIn2, big, passes }, say) => {
    const area = (in2: number) =>
      say.units === 'imperial' ? `${in2} in²` : `${Math.round((in2 * SQUARE_INCH) / 10) * 10} mm²`;
    const values = {
      mean: say.share(mean),
      need: say.share(required),
      area: area(voidIn2),
      limit: area(Math.round(limitIn2 * 10) / 10),
      eighty: say.share(eightyAnywhere.required()),
    };
    const right = big ? 'void' : mean >= required ? 'over' : 'under';
    const floorIn80 = required > eightyAnywhere.required() && mean >= eightyAnywhere.required();
    return {
      story: [say.t(`story-${surface}`, { shares: shares.map(say.share).join(', ') }), say.t('void-found', values)],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: big ? averageHidesIt.id : !passes && floorIn80 ? eightyAnywhere.id : null,
        right: say.t(right, values),
        wrong: [
          ...['over', 'under', 'void']
            .filter((one) => one !== right)
            .map((one) => ({ text: say.t(one, values), idea: one === 'over' && big ? averageHidesIt.id : null })),
          required > eightyAnywhere.required()
            ? { text: say.t('eighty', values), idea: eightyAnywhere.id }
            : { text: say.t('stone', values), idea: null },
        ],
      },
      why: [say.t(`why-${right}`, values)],
      rules: [surface === 'floor' ? 'coverage.panel-floor' : 'coverage.panel-wall', 'void.panel'],
    };
  },
});
