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
    const trowel = draw.stock([...squares.slice(2), ...narrow, ...uneven]);
    const jointMm = draw.size([1 / 16, 1 / 8, 3 / 16, 1 / 4, 5 / 16, 3 / 8, 1 / 2]);
    const room = jointMm >= trowel.widthMm - 1e-9;
    return draw.chance(room ? 1 : 0.75) ? { trowel, jointMm } : null;
  },
  pose: ({ trowel, jointMm }, say) => {
    const passes = jointMm >= trowel.widthMm - 1e-9;
    const deep = widthForDepth.swaps(trowel).widthMm;
    return {
      story: [say.t('story', { notch: say.notch(trowel), joint: say.length(jointMm) })],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: passes ? null : pressingIsEnough.id,
        right: say.t(passes ? 'room' : 'no-room'),
        wrong: [
          { text: say.t(passes ? 'no-room' : 'room'), idea: null },
          deep === trowel.widthMm
            ? { text: say.t('plenty'), idea: biggerIsSafer.id }
            : { text: say.t(jointMm >= deep - 1e-9 ? 'deep' : 'not-deep'), idea: widthForDepth.id },
          { text: say.t('pressed'), idea: pressingIsEnough.id },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [say.t(passes ? 'why-room' : 'why-none', { joint: say.length(jointMm), width: say.length(trowel.widthMm) })],
      rules: ['set.travel', 'set.joint-limits'],
    };
  },
});
