import { template } from '../../engine/template.ts';
import { square, vee } from '../../jobs/trowels.ts';
import { depthIsTheBed } from '../../wrong-ideas/depth-is-the-bed.ts';
import { vLikeSquare } from '../../wrong-ideas/v-like-square.ts';
import { widthForDepth } from '../../wrong-ideas/width-for-depth.ts';

/** Widths and depths a blade may be cut to, inches. */
const sizes = [3 / 16, 1 / 4, 5 / 16, 3 / 8, 7 / 16, 1 / 2, 5 / 8];

/** Measure a blade, say its name. */
export const readTheLabel = template({
  id: 'reading-a-notch/read-the-label',
  outcomes: ['read-a-label'],
  ideas: ['width-for-depth', 'depth-is-the-bed', 'v-like-square'],
  draw: (draw) => {
    const [width = 1 / 4, depth = 3 / 8] = draw.some(sizes, 2);
    const trowel = draw.stock([
      draw.chance(0.4) ? vee(width, depth) : square(width, depth, draw.pick([width, width, depth])),
    ]);
    return { trowel, measure: draw.whole(0, 1) };
  },
  pose: ({ trowel, measure }, say) => {
    const byDepth = { ...trowel, widthMm: trowel.depthMm };
    const measures = [
      say.t('across', { length: say.length(trowel.widthMm) }),
      say.t('deep', { length: say.length(trowel.depthMm) }),
      trowel.toothMm === 0 ? say.t('points') : say.t('between', { length: say.length(trowel.toothMm) }),
    ];
    return {
      story: [say.t('story', { measures: (measure === 0 ? measures : [...measures].reverse()).join(', ') })],
      ask: say.t('ask'),
      picture: { kind: 'trowel', trowel, words: measures.join(', ') },
      answer: {
        kind: 'one',
        right: say.notch(trowel),
        wrong: [
          { text: say.notch(widthForDepth.swaps(trowel)), idea: widthForDepth.id },
          trowel.shape === 'v'
            ? { text: say.notch(vLikeSquare.squares(trowel)), idea: vLikeSquare.id }
            : { text: say.notch({ ...trowel, shape: 'v' }), idea: vLikeSquare.id },
          { text: say.notch(byDepth), idea: depthIsTheBed.id },
        ],
      },
      why: [
        say.t('why', { width: say.length(trowel.widthMm), depth: say.length(trowel.depthMm) }),
        ...(trowel.toothMm === 0 || trowel.toothMm === trowel.widthMm
          ? []
          : [say.t('why-tooth', { tooth: say.length(trowel.toothMm) })]),
      ],
      rules: ['trowel.naming'],
    };
  },
});
