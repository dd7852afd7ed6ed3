import { template } from '../../engine/template.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { skinIsFine } from '../../wrong-ideas/skin-is-fine.ts';
import { waterBringsItBack } from '../../wrong-ideas/water-brings-it-back.ts';

const signs = ['slumps', 'good', 'dry', 'skinned'] as const;
type Sign = (typeof signs)[number];

/** What holders of a wrong idea would do, by the sign they see. */
const wrongs: Record<
  Sign,
  [text: string, idea: typeof skinIsFine.id | typeof waterBringsItBack.id | typeof biggerIsSafer.id | null][]
> = {
  slumps: [
    ['do-good', null],
    ['do-water', waterBringsItBack.id],
    ['do-deeper', biggerIsSafer.id],
  ],
  good: [
    ['do-slumps', null],
    ['do-water', waterBringsItBack.id],
    ['do-deeper', biggerIsSafer.id],
  ],
  dry: [
    ['do-good', skinIsFine.id],
    ['do-water', waterBringsItBack.id],
    ['do-deeper', biggerIsSafer.id],
  ],
  skinned: [
    ['do-good', skinIsFine.id],
    ['do-water', waterBringsItBack.id],
    ['do-deeper', biggerIsSafer.id],
  ],
};

/** Read a mix by the ridge it makes and the tile that was lifted. */
export const whatTheRidgeSays = template({
  id: 'mixing/what-the-ridge-says',
  outcomes: ['ridge-that-stands', 'skin-test'],
  ideas: ['skin-is-fine', 'water-brings-it-back', 'bigger-is-safer'],
  draw: (draw) => ({ sign: draw.pick(signs), told: draw.whole(0, 1), minutes: draw.pick([2, 4, 6]) }),
  pose: ({ sign, told, minutes }, say) => ({
    story: [say.t(`sees-${sign}-${told}`, { minutes })],
    ask: say.t('ask'),
    answer: {
      kind: 'one',
      right: say.t(`do-${sign}`),
      wrong: wrongs[sign].map(([text, idea]) => ({ text: say.t(text), idea })),
    },
    why: [say.t(`why-${sign}`)],
    rules: sign === 'skinned' ? ['time.finger', 'time.no-skin'] : ['mortar.stiffness', 'mortar.water'],
  }),
});
