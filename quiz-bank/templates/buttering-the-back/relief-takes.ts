import { meanBedMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { atAngle, narrow, squares } from '../../jobs/trowels.ts';
import { backCoatCounts } from '../../wrong-ideas/back-coat-counts.ts';
import { depthIsTheBed } from '../../wrong-ideas/depth-is-the-bed.ts';

/** What a ribbed back takes out of the bed. */
export const reliefTakes = template({
  id: 'buttering-the-back/relief-takes',
  outcomes: ['back-relief', 'mortar-a-notch-leaves'],
  ideas: ['depth-is-the-bed', 'back-coat-counts'],
  draw: (draw) => {
    const trowel = atAngle(draw.stock([...squares.slice(2, 4), ...narrow]), draw.pick([45, 60]));
    const reliefMm = draw.step(0.5, 1.5, 0.1);
    const share = reliefMm / meanBedMm(trowel);
    return share > 0.55 || share < 0.12 ? null : { trowel, reliefMm, share };
  },
  pose: ({ trowel, reliefMm, share }, say) => ({
    story: [say.t('story', { notch: say.notch(trowel), angle: trowel.angleDeg })],
    facts: [
      [say.t('bed'), say.gap(meanBedMm(trowel))],
      [say.t('relief'), say.gap(reliefMm)],
    ],
    ask: say.t('ask'),
    answer: {
      kind: 'number',
      quantity: 'share',
      value: share,
      tolerance: 0.03,
      digits: 0,
      ideas: [
        { idea: depthIsTheBed.id, value: reliefMm / depthIsTheBed.bedMm(trowel) },
        { idea: backCoatCounts.id, value: backCoatCounts.extra() },
      ],
    },
    why: [say.t('why', { relief: say.gap(reliefMm), bed: say.gap(meanBedMm(trowel)), share: say.share(share) })],
    rules: ['bed.relief', 'butter.relief'],
  }),
});
