import { coverageToReach, type CoveragePlace } from '../../../simulations/estimate/coverage-to-reach.ts';
import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { eightyAnywhere } from '../../wrong-ideas/eighty-anywhere.ts';

const places: readonly (Pick<CoveragePlace, 'exposure' | 'surface' | 'kind'> & {
  name: string;
  thicknessMm: number;
})[] = [
  { name: 'hall', exposure: 'interior-dry', surface: 'floor', kind: 'tile', thicknessMm: 9 },
  { name: 'office', exposure: 'interior-dry', surface: 'floor', kind: 'tile', thicknessMm: 9 },
  { name: 'kitchen-back', exposure: 'interior-dry', surface: 'wall', kind: 'tile', thicknessMm: 8 },
  { name: 'shower', exposure: 'interior-wet', surface: 'wall', kind: 'tile', thicknessMm: 8 },
  { name: 'steam', exposure: 'interior-wet', surface: 'floor', kind: 'tile', thicknessMm: 9 },
  { name: 'porch', exposure: 'exterior', surface: 'floor', kind: 'tile', thicknessMm: 9 },
  { name: 'stone-hall', exposure: 'interior-dry', surface: 'floor', kind: 'stone', thicknessMm: 9.5 },
  { name: 'glass-back', exposure: 'interior-dry', surface: 'wall', kind: 'glass', thicknessMm: 6 },
  { name: 'panel-floor', exposure: 'interior-dry', surface: 'floor', kind: 'panel', thicknessMm: 5.6 },
  { name: 'panel-wall', exposure: 'interior-dry', surface: 'wall', kind: 'panel', thicknessMm: 5.6 },
];

/** What of a place and a material decides. */
function reasonOf({ kind, exposure, surface }: (typeof places)[number]): string {
  if (kind === 'panel') return `panel-${surface}`;
  return kind !== 'tile' ? kind : exposure === 'interior-dry' ? 'dry' : 'wet';
}

/** The coverage a place and a material ask for. */
export const shareForThePlace = template({
  id: 'wet-outdoors-heated/share-for-the-place',
  outcomes: ['coverage-by-place', 'what-coverage-is'],
  ideas: ['eighty-anywhere'],
  draw: (draw) => {
    const wanted = draw.pick([0, 1, 2]);
    const place = draw.pick(places);
    const { value, rule } = coverageToReach({ standards: 'north-america', ...place });
    // The three figures come up about as often, so that none is a safe guess.
    const panel = valueOf('coverage.panel-floor', 'share');
    return wanted === (value === eightyAnywhere.required() ? 0 : value === panel ? 1 : 2)
      ? { place, value, rule }
      : null;
  },
  pose: ({ place, value, rule }, say) => {
    const shares = [
      eightyAnywhere.required(),
      valueOf('coverage.panel-floor', 'share'),
      valueOf('coverage.wet', 'share'),
      valueOf('coverage.as-house-wall', 'share'),
    ];
    return {
      story: [say.t(`place-${place.name}`)],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: say.share(value),
        wrong: shares
          .filter((share) => share !== value)
          .map((share) => ({
            text: say.share(share),
            idea: share === eightyAnywhere.required() ? eightyAnywhere.id : null,
          })),
      },
      why: [say.t(`why-${reasonOf(place)}`, { share: say.share(value) })],
      rules: [rule, 'coverage.scope'],
    };
  },
});
