import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { bagYieldIsMine } from '../../wrong-ideas/bag-yield-is-mine.ts';
import { depthIsTheBed } from '../../wrong-ideas/depth-is-the-bed.ts';

/** Mortar that the cavities of a mat swallow before a bed is combed. */
export const matCavities = template({
  id: 'under-boards-and-membranes/mat-cavities',
  outcomes: ['every-layer', 'whose-instructions'],
  ideas: ['bag-yield-is-mine', 'depth-is-the-bed'],
  draw: (draw) => ({
    depthMm: valueOf('mat.volume', 'depth'),
    share: draw.step(valueOf('mat.volume', 'least'), valueOf('mat.volume', 'most'), 0.05),
    areaM2: draw.floor(draw.pick([6, 9, 12, 15, 20, 28])),
  }),
  pose: ({ depthMm, share, areaM2 }, say) => {
    const value = depthMm * share * areaM2;
    return {
      story: [say.t('story', { area: say.area(areaM2) })],
      facts: [
        [say.t('depth'), say.length(depthMm)],
        [say.t('hollow'), say.share(share)],
        [say.t('full'), say.number(areaM2 * depthMm, 'volume', 0)],
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'volume',
        value,
        tolerance: 0.04 * value,
        digits: 0,
        ideas: [
          { idea: bagYieldIsMine.id, value: 0 },
          // The whole depth counted as mortar, as with a notch.
          { idea: depthIsTheBed.id, value: depthMm * areaM2 },
        ],
      },
      why: [say.t('why', { share: say.share(share), value: say.number(value, 'volume', 0) })],
      rules: ['mat.volume', 'mat.cavities'],
    };
  },
});
