import { template } from '../../engine/template.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { skinIsFine } from '../../wrong-ideas/skin-is-fine.ts';
import { waterBringsItBack } from '../../wrong-ideas/water-brings-it-back.ts';

const signs = ['slumps', 'good', 'dry', 'skinned'] as const;
type Sign = (typeof signs)[number];

/** Who would go on as if nothing were wrong. */
const goesOn: readonly Sign[] = ['dry', 'skinned'];

/** Read a mix by the ridge it makes and the tile that was lifted. */
export const whatTheRidgeSays = template({
  id: 'mixing/what-the-ridge-says',
  outcomes: ['ridge-that-stands', 'skin-test'],
  ideas: ['skin-is-fine', 'water-brings-it-back', 'bigger-is-safer'],
  draw: (draw) => {
    const sign = draw.pick(signs);
    return {
      sign,
      told: draw.whole(0, 1),
      minutes: draw.pick([2, 4, 6]),
      other: draw.pick(signs.filter((one) => one !== sign)),
      bigger: draw.chance(0.5),
    };
  },
  pose: ({ sign, told, minutes, other, bigger }, say) => ({
    story: [say.t(`sees-${sign}-${told}`, { minutes })],
    ask: say.t('ask'),
    answer: {
      kind: 'one',
      right: say.t(`do-${sign}`),
      wrong: [
        { text: say.t(`do-${other}`), idea: other === 'good' && goesOn.includes(sign) ? skinIsFine.id : null },
        { text: say.t('do-water'), idea: waterBringsItBack.id },
        // Going on is offered to whoever trusts the look of it, wherever something is wrong.
        bigger || other === 'good' || !goesOn.includes(sign)
          ? { text: say.t('do-deeper'), idea: biggerIsSafer.id }
          : { text: say.t('do-good'), idea: skinIsFine.id },
      ],
    },
    why: [say.t(`why-${sign}`)],
    rules: sign === 'skinned' ? ['time.finger', 'time.no-skin'] : ['mortar.stiffness', 'mortar.water'],
  }),
});
