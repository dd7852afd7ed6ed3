import { template } from '../../engine/template.ts';
import { even } from '../../jobs/tiles.ts';
import { averageHidesIt } from '../../wrong-ideas/average-hides-it.ts';

/** Contact of a tile set on dabs, by volume. */
export const fiveDabs = template({
  id: 'pulling-a-tile/five-dabs',
  outcomes: ['judge-coverage', 'ridges-as-evidence'],
  ideas: ['average-hides-it'],
  draw: (draw) => {
    const tile = draw.stock(even.slice(2));
    const count = draw.pick([4, 5, 6, 9]);
    const dabMl = draw.pick([30, 40, 50, 60]);
    const flatMm = draw.size([1 / 8, 3 / 16, 1 / 4]);
    const share = (count * dabMl * 1000) / flatMm / (tile.lengthMm * tile.widthMm);
    return share > 0.6 || share < 0.08 ? null : { tile, count, dabMl, flatMm, share };
  },
  pose: ({ tile, count, dabMl, flatMm, share }, say) => {
    const spot = (dabMl * 1000) / flatMm;
    const area = (mm2: number) =>
      say.units === 'imperial' ? `${Math.round(mm2 / 64.516) / 10} in²` : `${Math.round(mm2 / 100)} cm²`;
    return {
      story: [say.t('story', { tile: say.tile(tile.lengthMm, tile.widthMm), count, flat: say.length(flatMm) })],
      facts: [
        [say.t('spot'), area(spot)],
        [say.t('back'), area(tile.lengthMm * tile.widthMm)],
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'share',
        value: share,
        tolerance: 0.02,
        digits: 0,
        ideas: [{ idea: averageHidesIt.id, value: averageHidesIt.strength() }],
      },
      why: [say.t('why', { count, share: say.share(share) })],
      rules: ['set.no-dabs', 'coverage.dry'],
    };
  },
});
