import { coverageToReach } from '../../../simulations/estimate/coverage-to-reach.ts';
import { dipAllowed, flatnessToReach } from '../../../simulations/estimate/flatness.ts';
import { offsetLimit } from '../../../simulations/estimate/joint-limits.ts';
import type { RuleId } from '../../../simulations/rules/rulebook.ts';
import { feet } from '../../../simulations/units/length.ts';
import { template } from '../../engine/template.ts';
import { drawnArea } from '../../jobs/area.ts';
import { tile } from '../../jobs/tiles.ts';
import { averageHidesIt } from '../../wrong-ideas/average-hides-it.ts';
import { eightyAnywhere } from '../../wrong-ideas/eighty-anywhere.ts';
import { halfOffsetIsFine } from '../../wrong-ideas/half-offset-is-fine.ts';
import type { IdeaId } from '../../wrong-ideas/idea.ts';

const faults = ['dip', 'contact', 'offset'] as const;
type Fault = (typeof faults)[number];
const rules: Record<Fault, RuleId[]> = {
  dip: ['bed.no-leveller', 'flatness.large'],
  contact: ['coverage.wet', 'sampling.tiles'],
  offset: ['offset.third', 'lippage.bow'],
};

/** Who would go on, and why. */
const holders = {
  mortar: 'mortar-levels',
  notch: 'bigger-is-safer',
  chart: 'one-chart-for-all',
  most: 'average-hides-it',
  eighty: 'eighty-anywhere',
  coat: 'back-coat-counts',
  tap: 'hollow-is-loose',
  half: 'half-offset-is-fine',
  allowed: 'allowed-for-measured',
  push: 'press-out-the-bow',
} as const satisfies Record<string, IdeaId>;
const tempting: Record<Fault, readonly (keyof typeof holders)[]> = {
  dip: ['mortar', 'notch', 'chart', 'most'],
  contact: ['eighty', 'most', 'chart', 'coat', 'tap'],
  offset: ['half', 'allowed', 'push', 'mortar'],
};
/** Wrong ideas offered at once. */
const OFFERED = 4;

const large = [tile(24, 12), tile(24, 24), tile(36, 8), tile(48, 12)];
const OVER_MM = feet(10);

/** A job on its way, with one thing that stops it: which? */
export const stopTheJob = template({
  id: 'flat-first/stop-the-job',
  outcomes: ['patch-before-mortar', 'flatness-required', 'coverage-by-place', 'offset-allowed'],
  ideas: Object.values(holders),
  draw: (draw) => {
    const fault = draw.pick(faults);
    const size = draw.stock(large);
    const shares = Array.from({ length: 3 }, () => draw.whole(81, 92) / 100);
    const dipMm = draw.size([1 / 4, 5 / 16, 3 / 8]);
    const area = drawnArea({ pattern: 'offset', offsetShare: halfOffsetIsFine.share, tile: size });
    const allowed = dipAllowed(flatnessToReach(area, 'north-america').limit, OVER_MM);
    const most = offsetLimit(area, 'north-america').share;
    const place = { standards: 'north-america', exposure: 'interior-wet', surface: 'wall' } as const;
    const asked = coverageToReach({ ...place, kind: 'tile', thicknessMm: 9 }).value;
    // Each of the three stops the job by a clear margin.
    const stops = dipMm > 1.2 * allowed && most < halfOffsetIsFine.share && averageHidesIt.mean(shares) < asked - 0.03;
    return stops && averageHidesIt.mean(shares) > eightyAnywhere.required() + 0.012
      ? {
          fault,
          size,
          shares,
          dipMm,
          allowed,
          asked,
          other: draw.pick(faults.filter((one) => one !== fault)),
          wrong: draw.some(tempting[fault], OFFERED),
        }
      : null;
  },
  pose: ({ fault, size, shares, dipMm, allowed, asked, other, wrong }, say) => {
    const values = {
      tile: say.tile(size.lengthMm, size.widthMm),
      over: say.span(OVER_MM),
      dip: say.length(dipMm),
      allowed: say.length(allowed),
      shares: shares.map(say.share).join(', '),
      mean: say.share(averageHidesIt.mean(shares)),
      asked: say.share(asked),
      eighty: say.share(eightyAnywhere.required()),
      shift: say.length(halfOffsetIsFine.offsetMm(size.lengthMm)),
    };
    return {
      story: [say.t(`story-${fault}`, values)],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: say.t(`mend-${fault}`, values),
        wrong: [
          { text: say.t(`mend-${other}`, values), idea: null },
          ...wrong.map((one) => ({ text: say.t(one, values), idea: holders[one] })),
        ],
      },
      why: [say.t(`why-${fault}`, values)],
      rules: rules[fault],
    };
  },
});
