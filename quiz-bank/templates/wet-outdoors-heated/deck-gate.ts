import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { eightyAnywhere } from '../../wrong-ideas/eighty-anywhere.ts';
import { mortarLevels } from '../../wrong-ideas/mortar-levels.ts';
import { oneChartForAll } from '../../wrong-ideas/one-chart-for-all.ts';
import type { IdeaId } from '../../wrong-ideas/idea.ts';

const METRE_MM = 1000;

const parts = ['fall', 'board', 'seams', 'sealing', 'contact', 'frost'] as const;

/** Who would let each fault pass. */
const holders: Record<(typeof parts)[number], IdeaId | null> = {
  fall: mortarLevels.id,
  board: oneChartForAll.id,
  seams: null,
  sealing: null,
  contact: eightyAnywhere.id,
  frost: null,
};

/** A deck over a room: tick what must be put right before anyone combs. */
export const deckGate = template({
  id: 'wet-outdoors-heated/deck-gate',
  outcomes: ['water-in-voids', 'coverage-by-place', 'rule-out-causes'],
  ideas: ['mortar-levels', 'one-chart-for-all', 'eighty-anywhere'],
  draw: (draw) => ({
    shown: draw.some(parts, 5).map((part) => ({ part, bad: draw.chance(0.55) })),
    eighths: { bad: 1, good: 2 },
    wet: valueOf('coverage.wet', 'share'),
  }),
  pose: ({ shown, wet }, say) => {
    const fall = valueOf('substrate.slope', 'fall');
    const over = valueOf('substrate.slope', 'over');
    // A foot or a metre, as the reader measures falls.
    const fallOf = (aFoot: number): string =>
      say.units === 'imperial' ? say.length(aFoot) : say.number((aFoot / over) * METRE_MM, 'length', 0);
    const values = (bad: boolean) => ({
      fall: fallOf(bad ? fall / 2 : fall * 1.25),
      over: say.t(`over-${say.units}`),
      contact: say.share(bad ? eightyAnywhere.required() : wet),
      frost: say.share(valueOf('exterior.frost', 'vitreous')),
    });
    const says = (part: string, bad: boolean) => say.t(`${part}-${bad ? 'bad' : 'good'}`, values(bad));
    return {
      story: [say.t('story')],
      ask: say.t('ask'),
      answer: {
        kind: 'all',
        boxes: shown.map(({ part, bad }) => ({ text: says(part, bad), right: bad, idea: bad ? holders[part] : null })),
      },
      why: [
        ...shown
          .filter(({ bad }) => bad)
          .map(({ part }) => say.t(`why-${part}`, { ...values(true), wet: say.share(wet), least: fallOf(fall) })),
      ],
      rules: ['exterior.gate', 'substrate.slope', 'board.bed', 'coverage.wet', 'exterior.frost'],
    };
  },
});
