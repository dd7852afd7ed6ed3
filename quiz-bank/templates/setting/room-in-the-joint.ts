import { inches } from '../../../simulations/units/length.ts';
import { template } from '../../engine/template.ts';
import { narrow, squares, uneven } from '../../jobs/trowels.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';
import { widthForDepth } from '../../wrong-ideas/width-for-depth.ts';

/** Does the joint leave room to move the tile its notch's width? */
export const roomInTheJoint = template({
  id: 'setting/room-in-the-joint',
  outcomes: ['room-to-slide', 'press-and-move'],
  ideas: ['bigger-is-safer', 'pressing-is-enough', 'width-for-depth'],
  draw: (draw) => {
    const trowel = draw.pick([...squares.slice(2), ...narrow, ...uneven]);
    const jointMm = inches(draw.pick([1 / 16, 1 / 8, 3 / 16, 1 / 4, 5 / 16, 3 / 8, 1 / 2]));
    return Math.abs(jointMm - trowel.widthMm) < 0.5 && draw.chance(0.7) ? null : { trowel, jointMm };
  },
  pose: ({ trowel, jointMm }, say) => {
    const passes = jointMm >= trowel.widthMm - 1e-9;
    const swapped = widthForDepth.swaps(trowel).widthMm;
    const reason = (need: number) =>
      say.t(jointMm >= need - 1e-9 ? 'room' : 'no-room', { joint: say.length(jointMm), need: say.length(need) });
    return {
      story: [say.t('story', { notch: say.notch(trowel), joint: say.length(jointMm) })],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: passes ? null : pressingIsEnough.id,
        right: reason(trowel.widthMm),
        wrong: [
          ...(swapped === trowel.widthMm ? [] : [{ text: reason(swapped), idea: widthForDepth.id }]),
          { text: say.t('pressed'), idea: pressingIsEnough.id },
          { text: say.t('plenty', { notch: say.notch(trowel) }), idea: biggerIsSafer.id },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [say.t(passes ? 'why-room' : 'why-none', { joint: say.length(jointMm), width: say.length(trowel.widthMm) })],
      rules: ['set.travel', 'set.joint-limits'],
    };
  },
});
