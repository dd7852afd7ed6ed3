import { template } from '../../engine/template.ts';
import { square, squares, vees } from '../../jobs/trowels.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { oneChartForAll } from '../../wrong-ideas/one-chart-for-all.ts';

/** One notch under a membrane, another on top of it: which one is asked for? */
export const aboveAndBelow = template({
  id: 'under-boards-and-membranes/above-and-below',
  outcomes: ['membrane-notch', 'whose-instructions'],
  ideas: ['one-chart-for-all', 'bigger-is-safer'],
  draw: (draw) => ({
    below: draw.stock([...vees.slice(0, 2), ...squares.slice(0, 2)]),
    above: draw.stock([square(1 / 4), square(1 / 4, 3 / 8, 1 / 4), square(3 / 8)]),
    asksBelow: draw.chance(0.5),
  }),
  pose: ({ below, above, asksBelow }, say) => {
    const values = { below: say.notch(below), above: say.notch(above) };
    return {
      story: [say.t('story', values)],
      ask: say.t(asksBelow ? 'ask-below' : 'ask-above'),
      answer: {
        kind: 'one',
        right: asksBelow ? values.below : values.above,
        wrong: [
          { text: asksBelow ? values.above : values.below, idea: oneChartForAll.id },
          {
            text: say.t('safe', { notch: say.notch(biggerIsSafer.picks([above, square(1 / 2)])) }),
            idea: biggerIsSafer.id,
          },
          { text: say.t('flat'), idea: null },
        ],
      },
      why: [say.t(asksBelow ? 'why-below' : 'why-above', values)],
      rules: ['membrane.maker', 'membrane.bond'],
    };
  },
});
