import { template, type WrongChoice } from '../../engine/template.ts';
import { sameTrowel, square, squares, vees } from '../../jobs/trowels.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { oneChartForAll } from '../../wrong-ideas/one-chart-for-all.ts';

/** The maker of a membrane says one thing, a chart another; or the maker says nothing. */
export const whoseWord = template({
  id: 'under-boards-and-membranes/whose-word',
  outcomes: ['whose-instructions', 'membrane-notch'],
  ideas: ['one-chart-for-all', 'bigger-is-safer'],
  draw: (draw) => {
    const sheets = draw.sold([...vees.slice(0, 2), ...squares.slice(0, 3)]);
    const chart = draw.stock([square(1 / 4), square(1 / 4, 3 / 8, 1 / 4), square(3 / 8)]);
    const told = draw.pick(sheets);
    // A sheet for another membrane: right for that one, and wrong here.
    const other = draw.pick(sheets);
    const biggest = biggerIsSafer.picks([chart, ...draw.sold([square(1 / 2)])]);
    const all = [chart, told, biggest, other];
    const distinct = all.every((one, at) => all.findIndex((same) => sameTrowel(same, one)) === at);
    return distinct ? { silent: draw.chance(0.4), chart, told, biggest, other, left: draw.whole(0, 2) } : null;
  },
  pose: ({ silent, chart, told, biggest, other, left }, say) => {
    const ask = say.t('maker');
    const others: WrongChoice[] = [
      { text: say.notch(chart), idea: oneChartForAll.id },
      { text: say.t('safe', { notch: say.notch(biggest) }), idea: biggerIsSafer.id },
      { text: say.notch(other), idea: oneChartForAll.id },
    ];
    return {
      story: [
        say.t('story', { chart: say.notch(chart) }),
        say.t(silent ? 'silent' : 'told', { notch: say.notch(told) }),
        say.t('other', { notch: say.notch(other) }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: silent ? ask : say.notch(told),
        // Four choices either way, so that their number tells nothing.
        wrong: silent ? others : [{ text: ask, idea: null }, ...others.filter((_, at) => at !== left)],
      },
      why: [say.t(silent ? 'why-silent' : 'why-told', { notch: say.notch(told) })],
      rules: ['membrane.maker'],
    };
  },
});
