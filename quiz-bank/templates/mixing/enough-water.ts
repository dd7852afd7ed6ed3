import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { waterBringsItBack } from '../../wrong-ideas/water-brings-it-back.ts';

/** Is the water in the bucket inside what the sheet allows for this much powder? */
export const enoughWater = template({
  id: 'mixing/enough-water',
  outcomes: ['part-bag', 'water-and-rest'],
  ideas: ['water-brings-it-back'],
  draw: (draw) => {
    const bagKg = draw.pick([20, 25]);
    const least = Math.round((valueOf('mortar.water', 'least') + draw.pick([0, 0.02, 0.04])) * bagKg * 10) / 10;
    const most = Math.round((least + 0.04 * bagKg) * 10) / 10;
    const partKg = draw.pick([5, 8, 10, 12.5, 15]);
    const pouredL = Math.round(draw.step(0.7, 1.5, 0.05) * (least / bagKg) * partKg * 20) / 20;
    const low = (least * partKg) / bagKg;
    const high = (most * partKg) / bagKg;
    const clear = [low, high].every((limit) => Math.abs(pouredL / limit - 1) > 0.06);
    return clear ? { bagKg, least, most, partKg, pouredL, low, high } : null;
  },
  pose: ({ bagKg, least, most, partKg, pouredL, low, high }, say) => {
    const passes = pouredL >= low && pouredL <= high;
    const limits = {
      low: say.volume(low),
      high: say.volume(high),
      bagLow: say.volume(least),
      bagHigh: say.volume(most),
    };
    const verdict = passes ? 'inside' : pouredL < low ? 'short' : 'over';
    const others = ['inside', 'short', 'over'].filter((one) => one !== verdict);
    return {
      story: [say.t('story', { bag: say.mass(bagKg), ...limits, part: say.mass(partKg), poured: say.volume(pouredL) })],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: verdict === 'over' ? waterBringsItBack.id : null,
        right: say.t(verdict, limits),
        wrong: [
          ...others.map((one) => ({ text: say.t(one, limits), idea: null })),
          { text: say.t('easier'), idea: waterBringsItBack.id },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [say.t('why', { ...limits, part: say.mass(partKg), poured: say.volume(pouredL) })],
      rules: ['mortar.part-bag', 'mortar.water'],
    };
  },
});
