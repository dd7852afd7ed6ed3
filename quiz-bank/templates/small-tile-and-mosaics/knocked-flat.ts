import { meanBedMm, ridgeHeightMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { atAngle, narrow, squares, vees } from '../../jobs/trowels.ts';
import { depthIsTheBed } from '../../wrong-ideas/depth-is-the-bed.ts';
import { vLikeSquare } from '../../wrong-ideas/v-like-square.ts';

/** How far ridges come down when they are levelled with the flat side. */
export const knockedFlat = template({
  id: 'small-tile-and-mosaics/knocked-flat',
  outcomes: ['flatten-ridges', 'bed-from-ridge'],
  ideas: ['depth-is-the-bed', 'v-like-square'],
  draw: (draw) => ({
    trowel: atAngle(draw.stock([...squares.slice(1, 4), ...narrow, ...vees]), draw.pick([60, 75, 90])),
  }),
  pose: ({ trowel }, say) => {
    const height = ridgeHeightMm(trowel);
    const bed = meanBedMm(trowel);
    return {
      story: [say.t('story', { notch: say.notch(trowel), height: say.gap(height) })],
      facts: [
        [say.t('width'), say.length(trowel.widthMm)],
        [say.t('tooth'), trowel.toothMm === 0 ? say.t('tooth-none') : say.length(trowel.toothMm)],
      ],
      ask: say.t('ask'),
      picture: { kind: 'ridges', trowel, bedMm: null, words: say.t('picture', { height: say.gap(height) }) },
      answer: {
        kind: 'number',
        quantity: 'gap',
        value: bed,
        tolerance: Math.max(0.1, 0.05 * bed),
        digits: say.units === 'imperial' ? 3 : 1,
        ideas: [
          { idea: depthIsTheBed.id, value: depthIsTheBed.bedMm(trowel) },
          ...(trowel.shape === 'v' && trowel.depthMm !== trowel.widthMm
            ? [{ idea: vLikeSquare.id, value: meanBedMm(vLikeSquare.squares(trowel)) }]
            : []),
        ],
      },
      why: [say.t(trowel.shape === 'v' ? 'why-v' : 'why-square', { height: say.gap(height), bed: say.gap(bed) })],
      rules: ['mosaic.flatten', 'bed.flattened'],
      whyPicture: { kind: 'ridges', trowel, bedMm: bed, words: say.t('picture-why', { bed: say.gap(bed) }) },
    };
  },
});
