import { lippageShare } from '../../../simulations/tile/lippage.ts';
import { template } from '../../engine/template.ts';
import { allowedForMeasured } from '../../wrong-ideas/allowed-for-measured.ts';
import { halfOffsetIsFine } from '../../wrong-ideas/half-offset-is-fine.ts';
import { pressOutTheBow } from '../../wrong-ideas/press-out-the-bow.ts';

const offsets = [
  ['half', 1 / 2],
  ['third', 1 / 3],
  ['quarter', 1 / 4],
  ['fifth', 1 / 5],
  ['tenth', 1 / 10],
] as const;

/** What a bow makes of an offset. */
export const lipFromOffset = template({
  id: 'bowed-tile/lip-from-offset',
  outcomes: ['offset-allowed', 'lippage-allowed'],
  ideas: ['half-offset-is-fine', 'allowed-for-measured', 'press-out-the-bow'],
  draw: (draw) => {
    const [name, share] = draw.pick(offsets);
    return {
      name,
      share,
      lengthMm: draw.size([24, 36, 48]),
      bowMm: draw.step(0.6, 1.4, 0.1),
      allowedMm: draw.pick([2, 2.3, 2.6]),
    };
  },
  pose: ({ name, share, lengthMm, bowMm, allowedMm }, say) => {
    const value = lippageShare(share) * bowMm;
    return {
      story: [say.t('story', { length: say.length(lengthMm), offset: say.t(name) })],
      facts: [
        [say.t('measured'), say.gap(bowMm)],
        [say.t('allowed'), say.gap(allowedMm)],
        [say.t('share'), say.share(lippageShare(share))],
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'gap',
        value,
        tolerance: 0.06,
        digits: say.units === 'imperial' ? 3 : 2,
        ideas: [
          // Who believes in half bond sees no lip at all; so does who presses bows out, so the offset tells which is offered.
          ...(share === halfOffsetIsFine.share
            ? [{ idea: halfOffsetIsFine.id, value: 0 }]
            : [{ idea: pressOutTheBow.id, value: pressOutTheBow.bowLeftMm() }]),
          {
            idea: allowedForMeasured.id,
            value: lippageShare(share) * allowedForMeasured.bowMm({ measuredMm: bowMm, allowedMm }),
          },
        ],
      },
      why: [
        say.t('why', { share: say.share(lippageShare(share)), bow: say.gap(bowMm), lip: say.gap(value) }),
        say.t('why-third'),
      ],
      rules: ['lippage.bow', 'lippage.actual', 'offset.third'],
    };
  },
});
