import { offsetLimit } from '../../../simulations/estimate/joint-limits.ts';
import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { drawnArea } from '../../jobs/area.ts';
import { tile } from '../../jobs/tiles.ts';
import { allowedForMeasured } from '../../wrong-ideas/allowed-for-measured.ts';
import { pressOutTheBow } from '../../wrong-ideas/press-out-the-bow.ts';
import { halfOffsetIsFine } from '../../wrong-ideas/half-offset-is-fine.ts';

/** Somebody wants a certain offset: may it be laid? */
export const halfBond = template({
  id: 'large-tile-and-panels/half-bond',
  outcomes: ['offset-allowed', 'lippage-allowed'],
  ideas: ['half-offset-is-fine', 'press-out-the-bow', 'allowed-for-measured'],
  draw: (draw) => {
    const size = draw.stock([
      tile(12, 6),
      tile(12, 4),
      tile(8, 4),
      tile(24, 12),
      tile(24, 12),
      tile(36, 6),
      tile(48, 8),
    ]);
    const offset = draw.pick([1 / 2, 1 / 2, 1 / 3, 1 / 4]);
    const mockUpApproved = draw.chance(0.25);
    const { share } = offsetLimit(
      drawnArea({
        mockUpApproved,
        pattern: 'offset',
        offsetShare: offset,
        tile: size,
      }),
      'north-america',
    );
    const passes = offset <= share + 1e-9;
    return draw.chance(passes ? 0.6 : 1)
      ? { ...size, offset, mockUpApproved, passes, long: size.lengthMm > valueOf('offset.third', 'side') + 2 }
      : null;
  },
  pose: ({ lengthMm, widthMm, offset, mockUpApproved, passes, long }, say) => {
    const values = { side: say.length(valueOf('offset.third', 'side')), offset: say.length(offset * lengthMm) };
    const right = !passes
      ? 'too-far'
      : offset <= valueOf('offset.third', 'share') + 1e-9
        ? 'within'
        : long
          ? 'mock-up'
          : 'short';
    return {
      story: [
        say.t('story', { tile: say.tile(lengthMm, widthMm), ...values }),
        say.t(mockUpApproved ? 'approved' : 'not-approved'),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: passes ? null : halfOffsetIsFine.id,
        right: say.t(right, values),
        wrong: [
          ...['too-far', 'within', 'mock-up', 'short']
            .filter(
              (one) =>
                one !== right &&
                !(one === 'short' && !long) &&
                !(one === 'mock-up' && mockUpApproved) &&
                !(one === 'within' && right !== 'too-far' && offset < 0.4),
            )
            .slice(0, 2)
            .map((one) => ({ text: say.t(one, values), idea: null })),
          { text: say.t('looks'), idea: halfOffsetIsFine.id },
          { text: say.t('pressed'), idea: pressOutTheBow.id },
          { text: say.t('allowed'), idea: allowedForMeasured.id },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [say.t(`why-${right}`, values)],
      rules: ['offset.third', 'lippage.bow'],
    };
  },
});
