import { template } from '../../engine/template.ts';
import { square } from '../../jobs/trowels.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';
import { widthForDepth } from '../../wrong-ideas/width-for-depth.ts';

const blades = [
  square(1 / 4),
  square(1 / 2),
  square(1 / 4, 3 / 8, 1 / 4),
  square(1 / 4, 3 / 8, 1 / 2),
  square(3 / 8, 1 / 4, 1 / 4),
  square(3 / 8, 3 / 8, 1 / 8),
  square(1 / 2, 3 / 8, 1 / 4),
  square(1 / 4, 1 / 4, 1 / 2),
  square(1 / 4, 1 / 2, 3 / 8),
];

/** What a tile touches that merely lies on its ridges. */
export const firstTouch = template({
  id: 'what-the-ridges-are-for/first-touch',
  outcomes: ['what-coverage-is', 'why-ridges'],
  ideas: ['pressing-is-enough', 'width-for-depth'],
  draw: (draw) => ({ trowel: draw.stock(blades) }),
  pose: ({ trowel }, say) => {
    const share = trowel.widthMm / (trowel.widthMm + trowel.toothMm);
    const swapped = widthForDepth.swaps(trowel);
    const bySwap = swapped.widthMm / (swapped.widthMm + swapped.toothMm);
    return {
      story: [say.t('story')],
      facts: [
        [say.t('width'), say.length(trowel.widthMm)],
        [say.t('depth'), say.length(trowel.depthMm)],
        [say.t('tooth'), say.length(trowel.toothMm)],
      ],
      ask: say.t('ask'),
      picture: {
        kind: 'ridges',
        trowel: { ...trowel, angleDeg: 90 },
        bedMm: null,
        words: say.t('picture', { width: say.length(trowel.widthMm), tooth: say.length(trowel.toothMm) }),
      },
      answer: {
        kind: 'number',
        quantity: 'share',
        value: share,
        tolerance: 0.03,
        digits: 0,
        ideas: [
          { idea: pressingIsEnough.id, value: pressingIsEnough.coverage() },
          ...(Math.abs(bySwap - share) <= 0.07 ? [] : [{ idea: widthForDepth.id, value: bySwap }]),
        ],
      },
      why: [
        say.t('why', {
          width: say.length(trowel.widthMm),
          pitch: say.length(trowel.widthMm + trowel.toothMm),
          share: say.share(share),
        }),
      ],
      rules: ['set.resting', 'set.across'],
    };
  },
});
