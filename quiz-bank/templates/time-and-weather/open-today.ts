import { openMinutes, type Weather } from '../../../simulations/mortar/weather.ts';
import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { skinIsFine } from '../../wrong-ideas/skin-is-fine.ts';

const minutes = (sheetMin: number, weather: Weather): number =>
  openMinutes(sheetMin, valueOf('time.reference', 'temperature'), weather, {
    stepK: valueOf('time.weather', 'step'),
    warmer: valueOf('time.weather', 'warmer'),
    breeze: valueOf('time.weather', 'breeze'),
    wind: valueOf('time.weather', 'wind'),
    sun: valueOf('time.weather', 'sun'),
  });

/** How long the bed stays open on a day like this. */
export const openToday = template({
  id: 'time-and-weather/open-today',
  outcomes: ['open-time', 'spread-ahead'],
  ideas: ['skin-is-fine'],
  draw: (draw) => {
    const sheetMin = draw.pick([15, 20, 25, 30, 40, 50]);
    const weather: Weather = {
      temperatureC: valueOf('time.reference', 'temperature'),
      wind: draw.pick(['still', 'breeze', 'windy']),
      sun: draw.chance(0.5),
    };
    // An ideal day asks for no reckoning; it is drawn now and then, so that the shares are not taken blindly.
    if (weather.wind === 'still' && !weather.sun && !draw.chance(0.3)) return null;
    return { sheetMin, weather, potMin: valueOf('time.pot-life', 'hours') * 60, value: minutes(sheetMin, weather) };
  },
  pose: ({ sheetMin, weather, potMin, value }, say) => ({
    story: [
      say.t('story', {
        sheet: say.number(sheetMin, 'minutes', 0),
        temperature: say.temperature(weather.temperatureC),
        pot: say.number(potMin, 'minutes', 0),
      }),
      say.t(`sky-${weather.wind}-${weather.sun ? 'sun' : 'shade'}`),
    ],
    facts: [
      [say.t('breeze'), say.share(valueOf('time.weather', 'breeze'))],
      [say.t('wind'), say.share(valueOf('time.weather', 'wind'))],
      [say.t('sun'), say.share(valueOf('time.weather', 'sun'))],
    ],
    ask: say.t('ask'),
    answer: {
      kind: 'number',
      quantity: 'minutes',
      value,
      tolerance: 1,
      digits: 1,
      ideas: [{ idea: skinIsFine.id, value: skinIsFine.minutes({ openMin: value, potMin }) }],
    },
    why: [say.t('why', { value: say.number(value, 'minutes', 1) })],
    rules: ['time.weather', 'time.reference', 'class.open'],
  }),
});
