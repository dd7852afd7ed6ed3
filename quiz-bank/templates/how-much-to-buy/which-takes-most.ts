import { layerRecipes, litresPerM2 } from '../../../simulations/estimate/layers.ts';
import { nameNotch } from '../../../simulations/estimate/notches.ts';
import { template } from '../../engine/template.ts';
import { apart } from '../../jobs/apart.ts';
import { drawnArea } from '../../jobs/area.ts';
import { square } from '../../jobs/trowels.ts';
import { bagYieldIsMine } from '../../wrong-ideas/bag-yield-is-mine.ts';

const membranes = ['none', 'backer-board', 'uncoupling-mat', 'heated-mat', 'sheet-waterproofing'] as const;
/** Four beds clearly apart. */
const notches = [square(3 / 16), square(1 / 4), square(1 / 4, 3 / 8, 1 / 4), square(1 / 2)];

/** Four floors of one size: which takes the most mortar, every layer counted? */
export const whichTakesMost = template({
  id: 'how-much-to-buy/which-takes-most',
  outcomes: ['every-layer', 'bed-under-board'],
  ideas: ['bag-yield-is-mine'],
  draw: (draw) => {
    const made = notches
      .map((trowel) => {
        const membrane = draw.pick(membranes);
        const coat = draw.chance(0.4);
        const area = drawnArea({ membrane, tile: { lengthMm: 305, widthMm: 305 } });
        const recipes = layerRecipes(area, 'north-america', nameNotch(trowel), coat ? 'flat' : 'none');
        const bedOnly = litresPerM2(
          recipes.filter(({ name }) => name === 'bed'),
          45,
          0.5,
        );
        return { membrane, trowel, coat, litres: litresPerM2(recipes, 45, 0.5), bedOnly };
      })
      .sort((a, b) => a.litres - b.litres);
    if (
      !apart(
        made.map(({ litres }) => litres),
        0.12,
      )
    )
      return null;
    const byBed = made.map((_, at) => at).sort((a, b) => (made[a]?.bedOnly ?? 0) - (made[b]?.bedOnly ?? 0));
    const plain =
      apart(
        made.map(({ bedOnly }) => bedOnly),
        0.05,
      ) && byBed.join('') !== '0123';
    return plain ? { made, byBed } : null;
  },
  pose: ({ made, byBed }, say) => ({
    story: [say.t('story')],
    ask: say.t('ask'),
    answer: {
      kind: 'order',
      steps: made.map(({ membrane, trowel, coat }) =>
        say.t(coat ? 'coated' : 'plain', { membrane: say.t(membrane), notch: say.notch(trowel) }),
      ),
      first: say.t('least'),
      last: say.t('most'),
      ideas: [{ idea: bagYieldIsMine.id, order: byBed }],
    },
    why: [
      say.t('why'),
      ...made.map(({ membrane, trowel, litres }) =>
        say.t('why-each', { membrane: say.t(membrane), notch: say.notch(trowel), litres: say.gap(litres) }),
      ),
    ],
    rules: ['board.bed', 'mat.volume', 'mat.heated-volume', 'butter.extra'],
  }),
});
