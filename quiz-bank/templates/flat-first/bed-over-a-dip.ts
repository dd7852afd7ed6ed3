import { meanBedMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { atAngle, narrow, squares } from '../../jobs/trowels.ts';
import { depthIsTheBed } from '../../wrong-ideas/depth-is-the-bed.ts';
import { mortarLevels } from '../../wrong-ideas/mortar-levels.ts';

/** How thick the bed gets where a dip is filled with mortar. */
export const bedOverADip = template({
  id: 'flat-first/bed-over-a-dip',
  outcomes: ['bed-thickness-limits', 'patch-before-mortar'],
  ideas: ['depth-is-the-bed', 'mortar-levels'],
  draw: (draw) => {
    const trowel = atAngle(draw.stock([...squares.slice(2), ...narrow]), draw.pick([45, 60]));
    return { trowel, dipMm: draw.size([1 / 8, 3 / 16, 1 / 4, 5 / 16, 3 / 8]) };
  },
  pose: ({ trowel, dipMm }, say) => {
    const bed = meanBedMm(trowel);
    return {
      story: [
        say.t('story', { notch: say.notch(trowel), angle: trowel.angleDeg, bed: say.gap(bed), dip: say.marked(dipMm) }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'gap',
        value: bed + dipMm,
        tolerance: 0.3,
        digits: say.units === 'imperial' ? 3 : 1,
        ideas: [
          { idea: mortarLevels.id, value: mortarLevels.bedAtDipMm(bed) },
          { idea: depthIsTheBed.id, value: depthIsTheBed.bedMm(trowel) + dipMm },
        ],
      },
      why: [say.t('why', { bed: say.gap(bed), dip: say.gap(dipMm), sum: say.gap(bed + dipMm) })],
      rules: ['bed.no-leveller', 'bed.shrinks'],
    };
  },
});
