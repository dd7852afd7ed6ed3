import type { RuleId } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { tiles } from '../../jobs/tiles.ts';
import type { IdeaId } from '../../wrong-ideas/idea.ts';

const faults = ['parked', 'swirled', 'skinned', 'stiff'] as const;
type Fault = (typeof faults)[number];

/** What mends each fault, and what mends another one but not this. */
const mends: Record<Fault, { right: string; others: readonly string[]; rules: RuleId[] }> = {
  parked: { right: 'move', others: ['straight', 'mix'], rules: ['set.across', 'comb.straight'] },
  swirled: { right: 'straight', others: ['move', 'mix'], rules: ['comb.straight', 'set.across'] },
  skinned: { right: 'fresh', others: ['move', 'mix'], rules: ['time.no-skin', 'time.finger'] },
  stiff: { right: 'mix', others: ['fresh', 'straight'], rules: ['time.no-retemper', 'time.pot-life'] },
};

/** Who would do what instead. */
const holders = {
  press: 'pressing-is-enough',
  bigger: 'bigger-is-safer',
  along: 'along-as-good',
  coat: 'back-coat-counts',
  rest: 'average-hides-it',
  swirl: 'swirls-even-out',
  water: 'water-brings-it-back',
  looks: 'skin-is-fine',
} as const satisfies Record<string, IdeaId>;
const tempting: Record<Fault, readonly (keyof typeof holders)[]> = {
  parked: ['press', 'bigger', 'along', 'coat', 'rest', 'swirl'],
  swirled: ['press', 'bigger', 'along', 'coat', 'rest'],
  skinned: ['press', 'bigger', 'water', 'looks', 'coat'],
  stiff: ['press', 'bigger', 'water', 'looks'],
};
/** Wrong ideas offered at once. */
const OFFERED = 4;

/** Something is wrong under the first tile: what puts it right? */
export const putItRight = template({
  id: 'setting/put-it-right',
  outcomes: ['press-and-move', 'straight-one-way', 'skin-test', 'water-and-rest'],
  ideas: Object.values(holders),
  draw: (draw) => {
    const fault = draw.pick(faults);
    const potMin = draw.pick([90, 120, 180]);
    return {
      fault,
      told: draw.whole(0, 1),
      tile: draw.stock(tiles),
      potMin,
      // Past the pot life by a third to two thirds.
      ageMin: Math.round((potMin * draw.step(1.3, 1.7, 0.1)) / 10) * 10,
      other: draw.pick(mends[fault].others),
      wrong: draw.some(tempting[fault], OFFERED),
    };
  },
  pose: ({ fault, told, tile, potMin, ageMin, other, wrong }, say) => ({
    story: [
      say.t(`${fault}-${told}`, {
        tile: say.tile(tile.lengthMm, tile.widthMm),
        age: say.number(ageMin, 'minutes', 0),
        pot: say.number(potMin, 'minutes', 0),
      }),
    ],
    ask: say.t('ask'),
    answer: {
      kind: 'one',
      right: say.t(mends[fault].right),
      wrong: [{ text: say.t(other), idea: null }, ...wrong.map((one) => ({ text: say.t(one), idea: holders[one] }))],
    },
    why: [say.t(`why-${fault}`)],
    rules: mends[fault].rules,
  }),
});
