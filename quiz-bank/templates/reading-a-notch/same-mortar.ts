import { meanBedMm } from '../../../simulations/trowel/notch.ts';
import type { TrowelSetup } from '../../../simulations/bed/types.ts';
import { template } from '../../engine/template.ts';
import { narrow, sameTrowel, square, squares, uneven, vee, vees } from '../../jobs/trowels.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import type { IdeaId } from '../../wrong-ideas/idea.ts';
import { depthIsTheBed } from '../../wrong-ideas/depth-is-the-bed.ts';
import { vLikeSquare } from '../../wrong-ideas/v-like-square.ts';
import { widthForDepth } from '../../wrong-ideas/width-for-depth.ts';

const wanted = [...narrow, ...uneven, ...vees, square(3 / 8), square(1 / 2), square(3 / 16)];
const rack = [
  ...squares,
  ...narrow,
  ...uneven,
  ...vees,
  vee(1 / 2, 3 / 8),
  square(3 / 8, 1 / 4),
  square(1 / 2, 1 / 4),
  square(1 / 2, 3 / 8),
  square(1 / 4, 3 / 16),
];
const near = (a: number, b: number, share: number): boolean => Math.abs(a - b) <= share * b;

/** Which other trowel leaves what this one leaves. */
export const sameMortar = template({
  id: 'reading-a-notch/same-mortar',
  outcomes: ['mortar-a-notch-leaves', 'read-a-label'],
  ideas: ['depth-is-the-bed', 'width-for-depth', 'v-like-square', 'bigger-is-safer'],
  draw: (draw) => {
    const trowel = draw.stock(wanted);
    const bed = meanBedMm(trowel);
    const others = draw.sold(rack).filter((one) => !sameTrowel(one, trowel));
    const equal = others.filter((one) => near(meanBedMm(one), bed, 0.02));
    const unlike = others.filter((one) => !near(meanBedMm(one), bed, 0.12));
    const swapped = widthForDepth.swaps(trowel);
    const holders: { idea: IdeaId; picks: TrowelSetup[] }[] = [
      { idea: depthIsTheBed.id, picks: unlike.filter((one) => one.depthMm === depthIsTheBed.bedMm(trowel)) },
      {
        idea: widthForDepth.id,
        picks: unlike.filter(
          ({ shape, widthMm, depthMm }) =>
            shape === trowel.shape && widthMm === swapped.widthMm && depthMm === swapped.depthMm,
        ),
      },
      {
        idea: vLikeSquare.id,
        picks: trowel.shape === 'v' ? unlike.filter((one) => sameTrowel(one, vLikeSquare.squares(trowel))) : [],
      },
      {
        idea: biggerIsSafer.id,
        picks: unlike.filter((one) => near(biggerIsSafer.opening(one), biggerIsSafer.opening(trowel), 0.13)),
      },
    ];
    const wrong = holders.flatMap(({ idea, picks }) =>
      picks.length === 0 ? [] : [{ idea, trowel: draw.pick(picks) }],
    );
    const distinct = wrong.filter(
      ({ trowel: one }, at) => wrong.findIndex((other) => sameTrowel(other.trowel, one)) === at,
    );
    return equal.length === 0 || distinct.length < 2
      ? null
      : { trowel, right: draw.pick(equal), wrong: distinct.slice(0, 3) };
  },
  pose: ({ trowel, right, wrong }, say) => ({
    story: [say.t('story', { notch: say.notch(trowel) })],
    ask: say.t('ask'),
    picture: { kind: 'trowel', trowel, words: say.t('picture', { notch: say.notch(trowel) }) },
    answer: {
      kind: 'one',
      right: say.notch(right),
      wrong: wrong.map((one) => ({ text: say.notch(one.trowel), idea: one.idea })),
    },
    why: [
      say.t('why', {
        notch: say.notch(trowel),
        bed: say.gap(meanBedMm({ ...trowel, angleDeg: 90 })),
        other: say.notch(right),
        same: say.gap(meanBedMm({ ...right, angleDeg: 90 })),
      }),
      ...wrong.map((one) =>
        say.t('why-not', { notch: say.notch(one.trowel), bed: say.gap(meanBedMm({ ...one.trowel, angleDeg: 90 })) }),
      ),
    ],
    rules: ['trowel.naming'],
    whyPicture: {
      kind: 'ridges',
      trowel: right,
      bedMm: meanBedMm(right),
      words: say.t('picture-why', { notch: say.notch(right) }),
    },
  }),
});
