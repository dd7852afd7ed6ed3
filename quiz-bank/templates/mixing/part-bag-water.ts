import { KG_PER_POUND, LITRES_PER_QUART } from '../../engine/quantity.ts';
import { template } from '../../engine/template.ts';
import { waterBringsItBack } from '../../wrong-ideas/water-brings-it-back.ts';

/** Water for a part of a bag. */
export const partBagWater = template({
  id: 'mixing/part-bag-water',
  outcomes: ['part-bag', 'water-and-rest'],
  ideas: ['water-brings-it-back'],
  draw: (draw) => {
    if (draw.units === 'imperial') {
      const bagLb = draw.pick([25, 50]);
      const water = draw.step(5, 6.5, 0.5) * (bagLb / 50);
      return {
        bagKg: bagLb * KG_PER_POUND,
        waterL: water * LITRES_PER_QUART,
        partKg: draw.pick([5, 8, 10, 12, 15]) * KG_PER_POUND,
      };
    }
    const bagKg = draw.pick([10, 20, 25]);
    return { bagKg, waterL: draw.step(0.2, 0.3, 0.02) * bagKg, partKg: draw.pick([2, 3, 4, 5, 6]) };
  },
  pose: ({ bagKg, waterL, partKg }, say) => {
    const value = (waterL * partKg) / bagKg;
    return {
      story: [say.t('story', { bag: say.mass(bagKg), water: say.volume(waterL), part: say.mass(partKg) })],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'volume',
        value,
        tolerance: 0.03 * value,
        digits: 2,
        ideas: [{ idea: waterBringsItBack.id, value: waterBringsItBack.pours(value) }],
      },
      why: [
        say.t('why', {
          part: say.mass(partKg),
          bag: say.mass(bagKg),
          share: say.share(partKg / bagKg),
          water: say.volume(value),
        }),
      ],
      rules: ['mortar.part-bag', 'mortar.water'],
    };
  },
});
