import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { meanBedMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { atAngle, narrow, squares } from '../../jobs/trowels.ts';
import { pressOutTheBow } from '../../wrong-ideas/press-out-the-bow.ts';

/** How much of the crown of a bowed tile the mortar can reach: what lies there, over the gap there. */
export const middleOfABow = template({
  id: 'bowed-tile/middle-of-a-bow',
  outcomes: ['measure-warp', 'judge-coverage'],
  ideas: ['press-out-the-bow'],
  draw: (draw) => {
    const trowel = atAngle(draw.stock([...squares.slice(2), ...narrow]), draw.pick([45, 60]));
    const bedMm = meanBedMm(trowel);
    const bowMm = draw.step(0.8, 2.6, 0.1);
    const endMm = Math.max(valueOf('bed.least', 'bed'), 0.85 * bedMm);
    const value = bedMm / (endMm + bowMm);
    return value > 0.92 || value < 0.45
      ? null
      : { trowel, bedMm, bowMm, endMm, value, lengthMm: draw.size([24, 36, 48]) };
  },
  pose: ({ trowel, bedMm, bowMm, endMm, value, lengthMm }, say) => {
    const pressed = Math.min(1, bedMm / (endMm + pressOutTheBow.bowLeftMm()));
    return {
      story: [say.t('story', { length: say.length(lengthMm), notch: say.notch(trowel), angle: trowel.angleDeg })],
      facts: [
        [say.t('bed'), say.gap(bedMm)],
        [say.t('end'), say.gap(endMm)],
        [say.t('bow'), say.gap(bowMm)],
      ],
      ask: say.t('ask'),
      picture: { kind: 'gap', lengthMm, bowMm, bedMm: endMm, words: say.t('picture', { bow: say.gap(bowMm) }) },
      answer: {
        kind: 'number',
        quantity: 'share',
        value,
        tolerance: 0.03,
        digits: 0,
        ideas: [{ idea: pressOutTheBow.id, value: pressed }],
      },
      why: [
        say.t('why', { gap: say.gap(endMm + bowMm), bed: say.gap(bedMm), share: say.share(value) }),
        say.t('why-spring'),
      ],
      rules: ['bed.need', 'butter.recommended'],
    };
  },
});
