import { mostBed } from '../../../simulations/estimate/mortar-kind.ts';
import { template } from '../../engine/template.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { mortarLevels } from '../../wrong-ideas/mortar-levels.ts';

const kinds = ['thin-set', 'large-and-heavy'] as const;

/** Would the finished bed over a dip stay inside what this mortar may be? */
export const bedWithinItsMortar = template({
  id: 'flat-first/bed-within-its-mortar',
  outcomes: ['bed-thickness-limits', 'patch-before-mortar'],
  ideas: ['mortar-levels', 'bigger-is-safer'],
  draw: (draw) => {
    const kind = draw.pick(kinds);
    const bedMm = draw.size([1 / 8, 5 / 32, 3 / 16]);
    const dipMm = draw.size([1 / 16, 1 / 8, 3 / 16, 1 / 4, 5 / 16, 3 / 8, 1 / 2]);
    const most = mostBed(kind);
    const other = mostBed(kind === 'thin-set' ? 'large-and-heavy' : 'thin-set');
    return [most, other].every((one) => Math.abs((bedMm + dipMm) / one - 1) > 0.08)
      ? { kind, bedMm, dipMm, most, other }
      : null;
  },
  pose: ({ kind, bedMm, dipMm, most, other }, say) => {
    const sum = bedMm + dipMm;
    const passes = sum <= most;
    const reason = (limit: number) =>
      say.t(sum <= limit ? 'under' : 'over', { sum: say.length(sum), limit: say.length(limit) });
    return {
      story: [say.t('story', { bed: say.length(bedMm), dip: say.length(dipMm), kind: say.t(kind) })],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: passes ? null : mortarLevels.id,
        right: reason(most),
        wrong: [
          { text: reason(other), idea: null },
          { text: say.t('fills'), idea: mortarLevels.id },
          { text: say.t('notch'), idea: biggerIsSafer.id },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [say.t('why', { sum: say.length(sum), limit: say.length(most), kind: say.t(kind) }), say.t('why-patch')],
      rules: [kind === 'thin-set' ? 'bed.most-thin-set' : 'bed.most-heavy', 'bed.no-leveller', 'bed.shrinks'],
    };
  },
});
