import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { KG_PER_POUND } from '../../engine/quantity.ts';
import { template } from '../../engine/template.ts';

/**
 * The lifting equation's height factor with the load close to the body and no turning: 1 − 0.0075·|V − 30| with V in
 * inches (NIOSH 94-110). Other factors are taken at one, so the result is the most that could ever be allowed.
 */
const heightFactor = (inches: number): number => 1 - 0.0075 * Math.abs(inches - 30);

/** May one person lift this? */
export const liftTheBag = template({
  id: 'mixing/lift-the-bag',
  outcomes: ['part-bag'],
  ideas: [],
  draw: (draw) => {
    const massKg =
      draw.units === 'imperial'
        ? draw.pick([20, 25, 30, 35, 44, 46, 50, 55, 60]) * KG_PER_POUND
        : draw.pick([10, 12.5, 15, 20, 22, 25, 30]);
    const fromFloor = draw.chance(0.6);
    const limitKg = valueOf('safety.lifting', 'load') * heightFactor(fromFloor ? 0 : 30);
    return Math.abs(massKg / limitKg - 1) < 0.04
      ? null
      : { massKg, fromFloor, limitKg, loadKg: valueOf('safety.lifting', 'load') };
  },
  pose: ({ massKg, fromFloor, limitKg, loadKg }, say) => {
    const passes = massKg <= limitKg;
    const place = say.t(fromFloor ? 'floor' : 'bench');
    const reason = (limit: number, where: string) =>
      say.t(massKg <= limit ? 'under' : 'over', { limit: say.mass(limit), where });
    const otherLimit = fromFloor ? loadKg : loadKg * heightFactor(0);
    return {
      story: [
        say.t('story', {
          mass: say.mass(massKg),
          place,
          limit: say.mass(loadKg),
          factor: say.number(heightFactor(0), 'share'),
        }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: null,
        right: reason(limitKg, place),
        wrong: [
          { text: reason(otherLimit, say.t(fromFloor ? 'bench' : 'floor')), idea: null },
          { text: say.t('knees'), idea: null },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [say.t('why', { limit: say.mass(limitKg), place, mass: say.mass(massKg) }), say.t('caution')],
      rules: ['safety.lifting'],
    };
  },
});
