import { flatnessToReach } from '../../../simulations/estimate/flatness.ts';
import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { inches } from '../../../simulations/units/length.ts';
import { template } from '../../engine/template.ts';
import { drawnArea } from '../../jobs/area.ts';
import { tiles } from '../../jobs/tiles.ts';
import { mortarLevels } from '../../wrong-ideas/mortar-levels.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';

/** How flat the floor must be before the first bag is opened. */
export const whichLimit = template({
  id: 'flat-first/which-limit',
  outcomes: ['flatness-required'],
  ideas: ['mortar-levels', 'bigger-is-safer'],
  draw: (draw) => {
    const size = draw.stock(tiles);
    const { limit, decision } = flatnessToReach(drawnArea({ tile: size }), 'north-america');
    const large = decision.rule === 'flatness.large';
    const other = flatnessToReach(
      drawnArea({ tile: { lengthMm: inches(large ? 8 : 24), widthMm: inches(8) } }),
      'north-america',
    ).limit;
    return draw.chance(large ? 0.7 : 1) ? { size, limit, other, rule: decision.rule } : null;
  },
  pose: ({ size, limit, other, rule }, say) => {
    const says = (one: typeof limit) => say.t('within', { dip: say.length(one.dipMm), over: say.span(one.overMm) });
    return {
      story: [say.t('story', { tile: say.tile(size.lengthMm, size.widthMm) })],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: says(limit),
        wrong: [
          { text: says(other), idea: null },
          { text: say.t('mortar'), idea: mortarLevels.id },
          { text: say.t('bigger'), idea: biggerIsSafer.id },
        ],
      },
      why: [
        say.t(rule === 'flatness.large' ? 'why-large' : 'why-small', {
          dip: say.length(limit.dipMm),
          over: say.span(limit.overMm),
          edge: say.length(valueOf('large.threshold', 'edge')),
        }),
      ],
      rules: [rule, 'flatness.first'],
    };
  },
});
