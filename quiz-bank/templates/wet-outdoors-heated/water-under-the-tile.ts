import { template } from '../../engine/template.ts';
import { averageHidesIt } from '../../wrong-ideas/average-hides-it.ts';

/** How much water the voids of a porch can hold. */
export const waterUnderTheTile = template({
  id: 'wet-outdoors-heated/water-under-the-tile',
  outcomes: ['water-in-voids'],
  ideas: ['average-hides-it'],
  draw: (draw) => ({
    areaM2: draw.floor(draw.pick([8, 12, 16, 20, 25])),
    bedMm: draw.size([1 / 8, 5 / 32, 3 / 16]),
    bonded: draw.step(0.7, 0.92, 0.02),
  }),
  pose: ({ areaM2, bedMm, bonded }, say) => {
    const value = (1 - bonded) * bedMm * areaM2;
    return {
      story: [say.t('story', { area: say.area(areaM2), bonded: say.share(bonded) })],
      facts: [
        [say.t('bed'), say.marked(bedMm)],
        [say.t('layer'), say.number(bedMm * areaM2, 'volume', 1)],
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'volume',
        value,
        tolerance: 0.04 * value,
        digits: 1,
        ideas: [{ idea: averageHidesIt.id, value: averageHidesIt.waterL() }],
      },
      why: [say.t('why', { open: say.share(1 - bonded), value: say.number(value, 'volume', 1) })],
      rules: ['coverage.wet', 'exterior.frost'],
    };
  },
});
