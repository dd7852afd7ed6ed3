import { dipAllowed, flatnessToReach } from '../../../simulations/estimate/flatness.ts';
import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { feet, inches } from '../../../simulations/units/length.ts';
import { template } from '../../engine/template.ts';
import { drawnArea } from '../../jobs/area.ts';
import { tiles } from '../../jobs/tiles.ts';
import { mortarLevels } from '../../wrong-ideas/mortar-levels.ts';

const spans = [inches(24), feet(10)] as const;

/** Is this floor flat enough for this tile? */
export const flatEnough = template({
  id: 'flat-first/flat-enough',
  outcomes: ['flatness-required', 'patch-before-mortar'],
  ideas: ['mortar-levels'],
  draw: (draw) => {
    const size = draw.stock(tiles);
    const overMm = draw.pick(spans);
    const { limit, decision } = flatnessToReach(drawnArea({ tile: size }), 'north-america');
    const other = flatnessToReach(
      drawnArea({
        tile:
          decision.rule === 'flatness.large'
            ? { lengthMm: inches(8), widthMm: inches(8) }
            : { lengthMm: inches(24), widthMm: inches(24) },
      }),
      'north-america',
    ).limit;
    const allowed = dipAllowed(limit, overMm);
    const elsewhere = dipAllowed(other, overMm);
    const foundMm = draw.size([1 / 32, 1 / 16, 3 / 32, 5 / 32, 3 / 16, 5 / 16, 3 / 8]);
    const clear =
      [allowed, elsewhere].every((one) => Math.abs(foundMm / one - 1) > 0.12) && Math.abs(allowed - elsewhere) > 0.5;
    return clear ? { size, overMm, allowed, elsewhere, foundMm, rule: decision.rule } : null;
  },
  pose: ({ size, overMm, allowed, elsewhere, foundMm, rule }, say) => {
    const passes = foundMm <= allowed;
    const reason = (limit: number) =>
      say.t(foundMm <= limit ? 'under' : 'over', { limit: say.length(limit), over: say.span(overMm) });
    return {
      story: [
        say.t('story', {
          tile: say.tile(size.lengthMm, size.widthMm),
          over: say.span(overMm),
          found: say.length(foundMm),
        }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: passes ? null : mortarLevels.id,
        right: reason(allowed),
        wrong: [
          { text: reason(elsewhere), idea: null },
          { text: say.t('mortar'), idea: mortarLevels.id },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [
        say.t(rule === 'flatness.large' ? 'why-large' : 'why-small', {
          limit: say.length(allowed),
          over: say.span(overMm),
          edge: say.length(valueOf('large.threshold', 'edge')),
        }),
        ...(passes ? [] : [say.t('why-first')]),
      ],
      rules: [rule, 'bed.no-leveller'],
    };
  },
});
