import { openMinutes, type Weather } from '../../../simulations/mortar/weather.ts';
import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { apart } from '../../jobs/apart.ts';

const minutes = (weather: Weather): number =>
  openMinutes(valueOf('class.open', 'normal'), valueOf('time.reference', 'temperature'), weather, {
    stepK: valueOf('time.weather', 'step'),
    warmer: valueOf('time.weather', 'warmer'),
    breeze: valueOf('time.weather', 'breeze'),
    wind: valueOf('time.weather', 'wind'),
    sun: valueOf('time.weather', 'sun'),
  });

/** Four rooms and yards: where does the bed skin first? */
export const shortestFirst = template({
  id: 'time-and-weather/shortest-first',
  outcomes: ['open-time', 'skin-test'],
  ideas: [],
  draw: (draw) => {
    const days = Array.from({ length: 4 }, (): Weather => ({
      temperatureC: draw.pick([10, 15, 20, 25, 30, 35]),
      wind: draw.pick(['still', 'breeze', 'windy']),
      sun: draw.chance(0.4),
    })).sort((a, b) => minutes(a) - minutes(b));
    return apart(days.map(minutes), 0.15) ? { days } : null;
  },
  pose: ({ days }, say) => ({
    story: [say.t('story')],
    ask: say.t('ask'),
    answer: {
      kind: 'order',
      steps: days.map(({ temperatureC, wind, sun }) =>
        say.t('day', {
          temperature: say.temperature(temperatureC),
          wind: say.t(wind),
          sky: say.t(sun ? 'sun' : 'shade'),
        }),
      ),
      first: say.t('first'),
      last: say.t('last'),
      ideas: [],
    },
    why: [
      say.t('why'),
      ...days.map((day) =>
        say.t('why-each', {
          temperature: say.temperature(day.temperatureC),
          wind: say.t(day.wind),
          sky: say.t(day.sun ? 'sun' : 'shade'),
          open: say.number(minutes(day), 'minutes', 0),
        }),
      ),
    ],
    rules: ['time.weather', 'time.skin'],
  }),
});
