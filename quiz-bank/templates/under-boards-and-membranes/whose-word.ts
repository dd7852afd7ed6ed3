import { sheetNotches } from '../../../simulations/estimate/layers.ts';
import { template } from '../../engine/template.ts';
import { sameTrowel, square, squares, vees } from '../../jobs/trowels.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { oneChartForAll } from '../../wrong-ideas/one-chart-for-all.ts';

/** The maker of a membrane says one thing, a chart another; or the maker says nothing. */
export const whoseWord = template({
  id: 'under-boards-and-membranes/whose-word',
  outcomes: ['whose-instructions', 'membrane-notch'],
  ideas: ['one-chart-for-all', 'bigger-is-safer'],
  draw: (draw) => {
    const silent = draw.chance(0.4);
    const chart = draw.pick([square(1 / 4), square(1 / 4, 3 / 8, 1 / 4), square(3 / 8)]);
    const sheets = [...vees.slice(0, 2), ...squares.slice(0, 3)];
    const fine = sheetNotches('north-america').map((notch) => ({ ...notch, angleDeg: 60, wearMm: 0 }));
    const right = silent ? draw.pick(fine) : draw.pick(sheets);
    // A sheet for another membrane: right for that one, and wrong here.
    const other = draw.pick(silent ? sheets.filter((one) => !fine.some((good) => sameTrowel(good, one))) : sheets);
    const biggest = biggerIsSafer.picks([chart, square(1 / 2)]);
    const all = [chart, right, biggest, other];
    const distinct = all.every((one, at) => all.findIndex((same) => sameTrowel(same, one)) === at);
    return distinct ? { silent, chart, right, biggest, other } : null;
  },
  pose: ({ silent, chart, right, biggest, other }, say) => ({
    story: [
      say.t('story', { chart: say.notch(chart) }),
      say.t(silent ? 'silent' : 'told', { notch: say.notch(right) }),
      say.t('other', { notch: say.notch(other) }),
    ],
    ask: say.t('ask'),
    answer: {
      kind: 'one',
      right: say.notch(right),
      wrong: [
        { text: say.notch(chart), idea: oneChartForAll.id },
        { text: say.t('safe', { notch: say.notch(biggest) }), idea: biggerIsSafer.id },
        { text: say.notch(other), idea: oneChartForAll.id },
      ],
    },
    why: [say.t(silent ? 'why-silent' : 'why-told', { notch: say.notch(right) })],
    rules: ['membrane.maker', 'membrane.bond'],
  }),
});
