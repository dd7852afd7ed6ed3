import { meanBedMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { narrow, squares } from '../../jobs/trowels.ts';
import { bagYieldIsMine } from '../../wrong-ideas/bag-yield-is-mine.ts';
import { widthForDepth } from '../../wrong-ideas/width-for-depth.ts';

/** What worn teeth take away. */
export const wornTeeth = template({
  id: 'reading-a-notch/worn-teeth',
  outcomes: ['angle-and-wear'],
  ideas: ['bag-yield-is-mine', 'width-for-depth'],
  draw: (draw) => {
    const trowel = draw.stock([...squares.slice(2), ...narrow]);
    const wearMm = draw.size([1 / 32, 1 / 16, 3 / 32, 1 / 8]);
    return wearMm > 0.4 * trowel.depthMm ? null : { trowel, worn: { ...trowel, wearMm } };
  },
  pose: ({ trowel, worn }, say) => {
    const lost = 1 - meanBedMm(worn) / meanBedMm(trowel);
    const swapped = widthForDepth.swaps(worn);
    const lostSwapped = 1 - meanBedMm(swapped) / meanBedMm({ ...swapped, wearMm: 0 });
    return {
      story: [say.t('story', { notch: say.notch(trowel), left: say.length(trowel.depthMm - worn.wearMm) })],
      ask: say.t('ask'),
      picture: { kind: 'trowel', trowel: worn, words: say.t('picture', { wear: say.length(worn.wearMm) }) },
      answer: {
        kind: 'number',
        quantity: 'share',
        value: lost,
        tolerance: 0.02,
        digits: 0,
        ideas: [
          { idea: bagYieldIsMine.id, value: 0 },
          ...(Math.abs(lostSwapped - lost) < 0.01 ? [] : [{ idea: widthForDepth.id, value: lostSwapped }]),
        ],
      },
      why: [say.t('why', { wear: say.length(worn.wearMm), depth: say.length(trowel.depthMm), lost: say.share(lost) })],
      rules: ['trowel.wear', 'trowel.naming'],
    };
  },
});
