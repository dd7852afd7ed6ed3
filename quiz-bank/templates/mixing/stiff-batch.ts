import { template } from '../../engine/template.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { skinIsFine } from '../../wrong-ideas/skin-is-fine.ts';
import { waterBringsItBack } from '../../wrong-ideas/water-brings-it-back.ts';

/** A batch that has stiffened, inside or past its pot life. */
export const stiffBatch = template({
  id: 'mixing/stiff-batch',
  outcomes: ['water-and-rest', 'ridge-that-stands'],
  ideas: ['water-brings-it-back', 'skin-is-fine', 'bigger-is-safer'],
  draw: (draw) => {
    const potMin = draw.pick([90, 120, 180, 240]);
    const ageMin = draw.step(20, 330, 10);
    // Clear of the limit on either side, and not absurd.
    if (Math.abs(ageMin / potMin - 1) < 0.2 || ageMin / potMin > 1.6) return null;
    // Live and dead batches come up about as often.
    return draw.chance(ageMin > potMin ? 1 : 0.55) ? { potMin, ageMin, looks: draw.whole(0, 2) } : null;
  },
  pose: ({ potMin, ageMin, looks }, say) => {
    const dead = ageMin > potMin;
    const [right, other] = dead ? ['discard', 'stir'] : ['stir', 'discard'];
    return {
      story: [
        say.t(`story-${looks}`, { age: say.number(ageMin, 'minutes', 0), pot: say.number(potMin, 'minutes', 0) }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: say.t(right ?? ''),
        wrong: [
          { text: say.t(other ?? ''), idea: dead ? skinIsFine.id : null },
          { text: say.t('water'), idea: waterBringsItBack.id },
          { text: say.t('deeper'), idea: biggerIsSafer.id },
        ],
      },
      why: [
        say.t(dead ? 'why-dead' : 'why-live', {
          age: say.number(ageMin, 'minutes', 0),
          pot: say.number(potMin, 'minutes', 0),
        }),
      ],
      rules: ['time.no-retemper', 'time.pot-life'],
    };
  },
});
