import { coldFactor } from '../../../simulations/mortar/weather.ts';
import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';

/** Half of a step taken as half of the doubling is near enough for a rule of thumb: 1.5 for 1.41, and a hair. */
const HALF_STEP = 0.065;

/** How much longer a cold floor must be left alone. */
export const cureInTheCold = template({
  id: 'time-and-weather/cure-in-the-cold',
  outcomes: ['open-time'],
  ideas: [],
  draw: (draw) => {
    const from = valueOf('time.cold', 'from');
    const step = valueOf('time.cold', 'step');
    return { from, step, temperatureC: from - step * draw.pick([0.5, 1]), hours: draw.pick([8, 12, 16, 24, 36, 48]) };
  },
  pose: ({ from, step, temperatureC, hours }, say) => {
    const value = coldFactor(temperatureC, from, step) * hours * 60;
    return {
      story: [
        say.t('story', {
          hours,
          from: say.temperature(from),
          now: say.temperature(temperatureC),
          step: say.units === 'imperial' ? `${Math.round(step * 1.8)} °F` : `${step} °C`,
        }),
      ],
      ask: say.t('ask'),
      answer: { kind: 'number', quantity: 'hours', value, tolerance: HALF_STEP * value, digits: 0, ideas: [] },
      why: [
        say.t('why', { times: coldFactor(temperatureC, from, step).toFixed(1), value: say.number(value, 'hours', 0) }),
      ],
      rules: ['time.cold', 'time.temperature'],
    };
  },
});
