import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { inches } from '../../../simulations/units/length.ts';
import { template } from '../../engine/template.ts';
import { cellName } from '../../engine/letters.ts';

const SIDE = 5;

/** Readings over a floor; where is it ground, where is it filled? */
export const whereToWork = template({
  id: 'flat-first/where-to-work',
  outcomes: ['flatness-required', 'patch-before-mortar'],
  ideas: [],
  draw: (draw) => {
    const limitMm = valueOf('flatness.large', 'long');
    const [low, high] = draw.some(
      Array.from({ length: SIDE * SIDE }, (_, at) => at),
      2,
    );
    const steps = Array.from({ length: SIDE * SIDE }, (_, at) => {
      if (at === low) return -draw.whole(5, 8);
      if (at === high) return draw.whole(5, 8);
      return draw.whole(-2, 2);
    });
    return low === undefined || high === undefined ? null : { steps, low, high, fill: draw.chance(0.5), limitMm };
  },
  pose: ({ steps, low, high, fill, limitMm }, say) => {
    const cell = (at: number) => cellName(at % SIDE, Math.floor(at / SIDE));
    // Thirty-seconds of an inch, five of them over the limit; or whole millimetres, four of them over it.
    const sizeOf = (many: number): number =>
      say.units === 'imperial' ? inches(many / 32) : many > 2 ? many - 1 : many;
    const heights = steps.map((step) =>
      step === 0 ? '0' : `${step > 0 ? '+' : '−'}${say.length(sizeOf(Math.abs(step)))}`,
    );
    return {
      story: [say.t('story', { limit: say.length(limitMm), over: say.span(valueOf('flatness.large', 'longOver')) })],
      ask: say.t(fill ? 'ask-fill' : 'ask-grind'),
      picture: {
        kind: 'heights',
        columns: SIDE,
        rows: SIDE,
        heights: heights.map((height) => height.replace(/ (in|mm)$/, '')),
        words: say.t('picture', { unit: say.units === 'imperial' ? 'in' : 'mm' }),
        long: say.t('picture-long', { readings: heights.map((height, at) => `${cell(at)} ${height}`).join(', ') }),
      },
      answer: { kind: 'mark', columns: SIDE, rows: SIDE, right: [cell(fill ? low : high)], ideas: [] },
      why: [
        say.t(fill ? 'why-fill' : 'why-grind', {
          cell: cell(fill ? low : high),
          height: heights[fill ? low : high] ?? '',
        }),
      ],
      rules: ['flatness.large', 'flatness.first'],
    };
  },
});
