import { leastFall } from '../../../simulations/estimate/floor-plan.ts';
import { feet } from '../../../simulations/units/length.ts';
import { template } from '../../engine/template.ts';
import { mortarLevels } from '../../wrong-ideas/mortar-levels.ts';

const METRE_MM = 1000;

/** How much lower the drain end of a deck must be. */
export const fallOfADeck = template({
  id: 'wet-outdoors-heated/fall-of-a-deck',
  outcomes: ['water-in-voids', 'coverage-by-place'],
  ideas: ['mortar-levels'],
  draw: (draw) =>
    draw.units === 'imperial'
      ? { runMm: feet(draw.whole(6, 24)), otherMm: feet(draw.whole(30, 80)) }
      : { runMm: draw.step(2, 7, 0.5) * METRE_MM, otherMm: draw.whole(9, 24) * METRE_MM },
  pose: ({ runMm, otherMm }, say) => {
    const value = leastFall(runMm);
    return {
      story: [say.t('story', { run: say.span(runMm), other: say.span(otherMm) })],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'length',
        value,
        // A fall of two in a hundred is how many say the same rule.
        tolerance: Math.max(5, 0.045 * value),
        digits: say.units === 'imperial' ? 2 : 0,
        ideas: [{ idea: mortarLevels.id, value: mortarLevels.fallOfBaseMm() }],
      },
      why: [say.t('why', { fall: say.length(value), run: say.span(runMm) })],
      rules: ['substrate.slope', 'exterior.gate'],
    };
  },
});
