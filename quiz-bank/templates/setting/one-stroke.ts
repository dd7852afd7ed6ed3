import { pitchMm } from '../../../simulations/trowel/notch.ts';
import { inches } from '../../../simulations/units/length.ts';
import { template } from '../../engine/template.ts';
import { narrow, squares } from '../../jobs/trowels.ts';
import { alongAsGood } from '../../wrong-ideas/along-as-good.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';

/** What one light stroke adds. */
export const oneStroke = template({
  id: 'setting/one-stroke',
  outcomes: ['press-and-move', 'across-the-ridges'],
  ideas: ['pressing-is-enough', 'along-as-good'],
  draw: (draw) => {
    const trowel = draw.pick([...squares.slice(2), ...narrow]);
    const strokeMm = inches(draw.pick([1 / 8, 3 / 16, 1 / 4]));
    const gain = strokeMm / pitchMm(trowel);
    return gain < 0.1 || gain > 0.4 ? null : { trowel, strokeMm, gain, across: draw.chance(0.65) };
  },
  pose: ({ trowel, strokeMm, gain, across }, say) => {
    const value = across ? gain : 0;
    return {
      story: [
        say.t(across ? 'story-across' : 'story-along', {
          notch: say.notch(trowel),
          pitch: say.length(pitchMm(trowel)),
          stroke: say.length(strokeMm),
        }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'share',
        value,
        tolerance: 0.03,
        digits: 0,
        ideas: across
          ? [{ idea: pressingIsEnough.id, value: pressingIsEnough.gainFromMoving() }]
          : [{ idea: alongAsGood.id, value: gain }],
      },
      why: [
        say.t(across ? 'why-across' : 'why-along', {
          stroke: say.length(strokeMm),
          pitch: say.length(pitchMm(trowel)),
          gain: say.share(gain),
        }),
      ],
      rules: ['set.across', 'set.travel'],
    };
  },
});
