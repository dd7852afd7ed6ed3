import { allowedWarp } from '../../../simulations/estimate/tile-facts.ts';
import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { meanBedMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { drawnArea } from '../../jobs/area.ts';
import { atAngle, narrow, squares } from '../../jobs/trowels.ts';
import { allowedForMeasured } from '../../wrong-ideas/allowed-for-measured.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { pressOutTheBow } from '../../wrong-ideas/press-out-the-bow.ts';

/** A parabola's mean is two thirds of its height, so that much of the bow must be filled on average. */
const MEAN_OF_BOW = 2 / 3;

/** A bowed tile in the hand: set it, coat it, or send it back. */
export const whatToDoWithIt = template({
  id: 'bowed-tile/what-to-do-with-it',
  outcomes: ['measure-warp', 'when-to-butter'],
  ideas: ['press-out-the-bow', 'bigger-is-safer', 'allowed-for-measured'],
  draw: (draw) => {
    const lengthMm = draw.size([12, 18, 24, 36]);
    const edge = draw.pick(['rectified', 'calibrated'] as const);
    const trowel = atAngle(draw.stock([...squares.slice(2), ...narrow]), 45);
    const { tile } = drawnArea({ tile: { lengthMm, widthMm: lengthMm / 2, edge } });
    const limitMm = allowedWarp(tile, lengthMm, 'north-america').mm;
    const bowMm = draw.step(0.3, 3.2, 0.1);
    const bedMm = meanBedMm(trowel);
    const needMm = valueOf('bed.least', 'bed') + MEAN_OF_BOW * bowMm;
    if (Math.abs(bowMm / limitMm - 1) < 0.12 || Math.abs(bedMm / needMm - 1) < 0.06) return null;
    const todo = bowMm > limitMm ? 'send' : bedMm < needMm ? 'coat' : 'set';
    // Each of the three ends comes up about as often.
    return draw.chance(todo === 'send' ? 0.45 : todo === 'set' ? 1 : 0.9)
      ? { lengthMm, edge, trowel, limitMm, bowMm, bedMm, needMm, todo }
      : null;
  },
  pose: ({ lengthMm, edge, trowel, limitMm, bowMm, bedMm, needMm, todo }, say) => ({
    story: [say.t('story', { length: say.length(lengthMm), edge: say.t(edge), notch: say.notch(trowel) })],
    facts: [
      [say.t('bow'), say.gap(bowMm)],
      [say.t('limit'), say.gap(limitMm)],
      [say.t('bed'), say.gap(bedMm)],
      [say.t('need'), say.gap(needMm)],
    ],
    ask: say.t('ask'),
    answer: {
      kind: 'one',
      right: say.t(todo),
      wrong: [
        ...['send', 'coat', 'set']
          .filter((one) => one !== todo)
          .map((one) => ({
            text: say.t(one),
            // Within its limit, so nothing to do: the limit again in place of what the straightedge says.
            idea: one === 'set' && todo === 'coat' ? allowedForMeasured.id : null,
          })),
        { text: say.t('press'), idea: pressOutTheBow.id },
        { text: say.t('bigger'), idea: biggerIsSafer.id },
      ],
    },
    why: [
      say.t(`why-${todo}`, {
        bow: say.gap(bowMm),
        limit: say.gap(limitMm),
        bed: say.gap(bedMm),
        need: say.gap(needMm),
      }),
    ],
    rules: ['bed.need', 'butter.recommended', edge === 'rectified' ? 'warp.rectified' : 'warp.porcelain'],
  }),
});
