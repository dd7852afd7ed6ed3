import { valueOf, type RuleId } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { square } from '../../jobs/trowels.ts';
import { bagYieldIsMine } from '../../wrong-ideas/bag-yield-is-mine.ts';

const rates = [
  ['rate.quarter-square', square(1 / 4)],
  ['rate.quarter-three-eighths', square(1 / 4, 3 / 8, 1 / 4)],
  ['rate.half-square', square(1 / 2)],
] as const satisfies readonly (readonly [RuleId, unknown])[];

/** What a bag covers when the board under the tile takes its own bed. */
export const twoLayers = template({
  id: 'under-boards-and-membranes/two-layers',
  outcomes: ['bed-under-board', 'every-layer'],
  ideas: ['bag-yield-is-mine'],
  draw: (draw) => {
    const [rule, trowel] = draw.pick(rates);
    // A crew's own rates, somewhere between what is published.
    const between = (id: typeof rule, part: number) =>
      valueOf(id, 'least') + part * (valueOf(id, 'most') - valueOf(id, 'least'));
    return {
      rule,
      trowel,
      tileRate: between(rule, draw.step(0, 1, 0.1)),
      boardRate: between('rate.quarter-square', draw.step(0, 1, 0.1)),
    };
  },
  pose: ({ rule, trowel, tileRate, boardRate }, say) => {
    const value = 1 / (1 / tileRate + 1 / boardRate);
    return {
      story: [say.t('story', { tileNotch: say.notch(trowel), boardNotch: say.notch(square(1 / 4)) })],
      facts: [
        [say.t('board'), say.number(boardRate, 'rate', say.units === 'imperial' ? 0 : 1)],
        [say.t('tile'), say.number(tileRate, 'rate', say.units === 'imperial' ? 0 : 1)],
      ],
      ask: say.t('ask'),
      picture: {
        kind: 'layers',
        layers: ['tile-layer', 'bed', 'board-layer', 'bed-board', 'floor'].map((name) => say.t(name)),
        words: say.t('picture'),
      },
      answer: {
        kind: 'number',
        quantity: 'rate',
        value,
        tolerance: 0.03 * value,
        digits: say.units === 'imperial' ? 0 : 1,
        ideas: [{ idea: bagYieldIsMine.id, value: bagYieldIsMine.rate(tileRate) }],
      },
      why: [say.t('why', { value: say.number(value, 'rate', say.units === 'imperial' ? 0 : 1) })],
      rules: ['board.bed', rule, 'rate.quarter-square'],
    };
  },
});
