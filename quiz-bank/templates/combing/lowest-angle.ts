import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { meanBedMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { atAngle, narrow, squares, uneven } from '../../jobs/trowels.ts';
import { depthIsTheBed } from '../../wrong-ideas/depth-is-the-bed.ts';
import { widthForDepth } from '../../wrong-ideas/width-for-depth.ts';

const angles = [30, 45, 60, 75, 90] as const;

/** How far the blade may sink before the bed is too thin. */
export const lowestAngle = template({
  id: 'combing/lowest-angle',
  outcomes: ['angle-and-wear', 'bed-thickness-limits'],
  ideas: ['depth-is-the-bed', 'width-for-depth'],
  draw: (draw) => {
    const trowel = draw.stock([...squares, ...narrow, ...uneven]);
    const needMm = valueOf('bed.least', 'bed') * draw.pick([1, 1.25, 1.5, 1.75, 2]);
    const lowest = (one: typeof trowel) => angles.find((angle) => meanBedMm(atAngle(one, angle)) >= needMm);
    const right = lowest(trowel);
    const beds = angles.map((angle) => meanBedMm(atAngle(trowel, angle)));
    const bySwap = lowest(widthForDepth.swaps(trowel));
    // The holder who takes the depth for the bed sees enough at any angle.
    if (
      !right ||
      right === 30 ||
      depthIsTheBed.bedMm(trowel) < needMm ||
      !beds.every((bed) => Math.abs(bed / needMm - 1) > 0.03)
    )
      return null;
    return { trowel, needMm, right, bySwap: bySwap !== undefined && bySwap !== right && bySwap !== 30 ? bySwap : null };
  },
  pose: ({ trowel, needMm, right, bySwap }, say) => {
    const others = angles
      .filter((angle) => angle !== right && angle !== 30 && angle !== bySwap)
      .slice(0, bySwap === null ? 2 : 1);
    return {
      story: [say.t('story', { notch: say.notch(trowel), need: say.gap(needMm) })],
      ask: say.t('ask'),
      picture: { kind: 'trowel', trowel, words: say.t('picture', { notch: say.notch(trowel) }) },
      answer: {
        kind: 'one',
        right: `${right}°`,
        wrong: [
          { text: '30°', idea: depthIsTheBed.id },
          ...(bySwap === null ? [] : [{ text: `${bySwap}°`, idea: widthForDepth.id }]),
          ...others.map((angle) => ({ text: `${angle}°`, idea: null })),
        ],
      },
      why: angles.map((angle) => say.t('why', { angle, bed: say.gap(meanBedMm(atAngle(trowel, angle))) })),
      rules: ['trowel.angle', 'bed.least'],
    };
  },
});
