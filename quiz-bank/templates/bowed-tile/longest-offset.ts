import { offsetLimit } from '../../../simulations/estimate/joint-limits.ts';
import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { drawnArea } from '../../jobs/area.ts';
import { halfOffsetIsFine } from '../../wrong-ideas/half-offset-is-fine.ts';

/** The longest offset a tile may be laid with, with or without an approved mock-up. */
export const longestOffset = template({
  id: 'bowed-tile/longest-offset',
  outcomes: ['offset-allowed'],
  ideas: ['half-offset-is-fine'],
  draw: (draw) => {
    const lengthMm = draw.size([8, 12, 16, 18, 24, 24, 36, 48]);
    const widthMm = lengthMm / draw.pick([2, 4]);
    const mockUpApproved = draw.chance(0.25);
    const { share } = offsetLimit(
      drawnArea({ mockUpApproved, pattern: 'offset', tile: { lengthMm, widthMm } }),
      'north-america',
    );
    return { lengthMm, widthMm, mockUpApproved, share };
  },
  pose: ({ lengthMm, widthMm, mockUpApproved, share }, say) => {
    const value = share * lengthMm;
    return {
      story: [say.t('story', { tile: say.tile(lengthMm, widthMm) }), say.t(mockUpApproved ? 'mock-up' : 'no-mock-up')],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'length',
        value,
        tolerance: 3.2,
        digits: say.units === 'imperial' ? 2 : 0,
        ideas:
          share < halfOffsetIsFine.share
            ? [{ idea: halfOffsetIsFine.id, value: halfOffsetIsFine.offsetMm(lengthMm) }]
            : [],
      },
      why: [
        say.t(share < 0.5 ? 'why-third' : mockUpApproved ? 'why-mock-up' : 'why-short', {
          offset: say.length(value),
          side: say.length(valueOf('offset.third', 'side')),
        }),
      ],
      rules: ['offset.third', 'lippage.bow'],
    };
  },
});
