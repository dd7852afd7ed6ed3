import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { tilesAhead } from '../../../simulations/mortar/weather.ts';
import { template } from '../../engine/template.ts';
import { skinIsFine } from '../../wrong-ideas/skin-is-fine.ts';

/** For how many tiles to comb at once. */
export const spreadAhead = template({
  id: 'time-and-weather/spread-ahead',
  outcomes: ['spread-ahead', 'open-time'],
  ideas: ['skin-is-fine'],
  draw: (draw) => {
    const openMin = draw.pick([10, 12, 15, 20, 25, 30]);
    const paceMin = draw.pick([2, 3, 4, 5, 6, 8, 25, 40, 45]);
    return { openMin, paceMin, potMin: valueOf('time.pot-life', 'hours') * 60, tiles: tilesAhead(openMin, paceMin) };
  },
  pose: ({ openMin, paceMin, potMin, tiles }, say) => {
    const held = tilesAhead(skinIsFine.minutes({ openMin, potMin }), paceMin);
    return {
      story: [
        say.t('story', {
          open: say.number(openMin, 'minutes', 0),
          pot: say.number(potMin, 'minutes', 0),
          pace: say.number(paceMin, 'minutes', 0),
        }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'count',
        value: tiles,
        tolerance: 0,
        digits: 0,
        ideas: held === tiles ? [] : [{ idea: skinIsFine.id, value: held }],
      },
      why: [say.t(openMin < paceMin ? 'why-one' : 'why', { open: openMin, pace: paceMin, tiles })],
      rules: ['time.ahead', 'class.open', 'time.pot-life'],
    };
  },
});
