import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { narrow, squares } from '../../jobs/trowels.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';
import { widthForDepth } from '../../wrong-ideas/width-for-depth.ts';

/** How far a tile must travel across its ridges. */
export const howFar = template({
  id: 'setting/how-far',
  outcomes: ['across-the-ridges', 'press-and-move'],
  ideas: ['pressing-is-enough', 'width-for-depth'],
  draw: (draw) => ({ trowel: draw.stock([...squares.slice(1), ...narrow]) }),
  pose: ({ trowel }, say) => {
    const byDepth = widthForDepth.swaps(trowel).widthMm;
    return {
      story: [say.t('story', { notch: say.notch(trowel) })],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'length',
        value: trowel.widthMm,
        tolerance: 1,
        digits: say.units === 'imperial' ? 3 : 1,
        ideas: [
          { idea: pressingIsEnough.id, value: pressingIsEnough.travelMm() },
          ...(Math.abs(byDepth - trowel.widthMm) <= 2.1 ? [] : [{ idea: widthForDepth.id, value: byDepth }]),
        ],
      },
      why: [
        say.t('why', { width: say.length(trowel.widthMm) }),
        say.t('views', {
          from: say.length(valueOf('set.travel-manual', 'from')),
          to: say.length(valueOf('set.travel-manual', 'to')),
        }),
      ],
      rules: ['set.travel', 'set.travel-manual', 'set.across'],
    };
  },
});
