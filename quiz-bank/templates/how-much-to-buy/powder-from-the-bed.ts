import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { meanBedMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { atAngle, narrow, squares, vees } from '../../jobs/trowels.ts';
import { depthIsTheBed } from '../../wrong-ideas/depth-is-the-bed.ts';
import { vLikeSquare } from '../../wrong-ideas/v-like-square.ts';

/** Powder for an area, from the bed the comb really leaves. */
export const powderFromTheBed = template({
  id: 'how-much-to-buy/powder-from-the-bed',
  outcomes: ['bags-from-bed', 'mortar-a-notch-leaves'],
  ideas: ['depth-is-the-bed', 'v-like-square'],
  draw: (draw) => {
    const trowel = atAngle(draw.stock([...squares.slice(2), ...narrow, ...vees.slice(0, 2)]), draw.pick([45, 60]));
    return {
      trowel,
      bedMm: meanBedMm(trowel),
      areaM2: draw.floor(draw.pick([5, 8, 10, 15, 20])),
      rate: valueOf('rate.dry-per-mm', 'rate'),
    };
  },
  pose: ({ trowel, bedMm, areaM2, rate }, say) => {
    const value = rate * bedMm * areaM2;
    // A layer of one unit of the reader's own: a millimetre, or a sixteenth of an inch.
    const step = say.units === 'imperial' ? 25.4 / 16 : 1;
    return {
      story: [say.t('story', { area: say.area(areaM2), notch: say.notch(trowel), angle: trowel.angleDeg })],
      facts: [
        [say.t('bed'), say.gap(bedMm)],
        [say.t('rate', { step: say.length(step) }), say.mass(rate * step * areaM2)],
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'mass',
        value,
        tolerance: 0.05 * value,
        digits: 0,
        ideas: [
          { idea: depthIsTheBed.id, value: rate * depthIsTheBed.bedMm(trowel) * areaM2 },
          ...(trowel.shape === 'v'
            ? [{ idea: vLikeSquare.id, value: rate * meanBedMm(vLikeSquare.squares(trowel)) * areaM2 }]
            : []),
        ],
      },
      why: [say.t('why', { bed: say.gap(bedMm), value: say.mass(value) })],
      rules: ['rate.dry-per-mm', 'trowel.angle'],
    };
  },
});
