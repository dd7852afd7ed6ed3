import { meanBedMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { atAngle, narrow, squares, vees } from '../../jobs/trowels.ts';
import { depthIsTheBed } from '../../wrong-ideas/depth-is-the-bed.ts';
import { vLikeSquare } from '../../wrong-ideas/v-like-square.ts';
import { widthForDepth } from '../../wrong-ideas/width-for-depth.ts';

/** How thick a bed one notch leaves at a given angle. */
export const bedLeft = template({
  id: 'reading-a-notch/bed-left',
  outcomes: ['mortar-a-notch-leaves', 'bed-from-ridge'],
  ideas: ['depth-is-the-bed', 'width-for-depth', 'v-like-square'],
  draw: (draw) => {
    const trowel = atAngle(draw.stock([...squares, ...narrow, ...vees]), draw.pick([45, 60, 75, 90]));
    return { trowel, tolerance: Math.max(0.1, 0.05 * meanBedMm(trowel)) };
  },
  pose: ({ trowel, tolerance }, say) => {
    const sine = meanBedMm(trowel) / meanBedMm({ ...trowel, angleDeg: 90 });
    const bed = meanBedMm(trowel);
    const ideas = [
      { idea: depthIsTheBed.id, value: depthIsTheBed.bedMm(trowel) },
      ...(trowel.shape === 'v'
        ? [{ idea: vLikeSquare.id, value: meanBedMm(vLikeSquare.squares(trowel)) }]
        : trowel.widthMm === trowel.depthMm
          ? []
          : [{ idea: widthForDepth.id, value: meanBedMm(widthForDepth.swaps(trowel)) }]),
    ];
    return {
      story: [say.t('story', { notch: say.notch(trowel), angle: trowel.angleDeg })],
      facts: [
        [say.t('width'), say.length(trowel.widthMm)],
        [say.t('depth'), say.length(trowel.depthMm)],
        [say.t('tooth'), trowel.toothMm === 0 ? say.t('tooth-none') : say.length(trowel.toothMm)],
        [say.t('height'), say.share(sine)],
      ],
      ask: say.t('ask'),
      picture: { kind: 'trowel', trowel, words: say.t('picture', { notch: say.notch(trowel) }) },
      answer: {
        kind: 'number',
        quantity: 'gap',
        value: bed,
        tolerance,
        digits: say.units === 'imperial' ? 3 : 1,
        ideas,
      },
      why: [say.t(trowel.shape === 'v' ? 'why-v' : 'why-square', { bed: say.gap(bed), share: say.share(sine) })],
      rules: ['trowel.naming', 'trowel.angle'],
      whyPicture: { kind: 'ridges', trowel, bedMm: bed, words: say.t('picture-why', { bed: say.gap(bed) }) },
    };
  },
});
