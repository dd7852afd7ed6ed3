import { template } from '../../engine/template.ts';
import { oblong } from '../../jobs/tiles.ts';
import { alongAsGood } from '../../wrong-ideas/along-as-good.ts';
import { swirlsEvenOut } from '../../wrong-ideas/swirls-even-out.ts';
import type { IdeaId } from '../../wrong-ideas/idea.ts';

const faults = ['good', 'turned', 'swirled', 'crossed'] as const;
type Fault = (typeof faults)[number];

/** Who would leave each fault as it is. */
const blind: Record<Fault, IdeaId | null> = {
  good: null,
  turned: alongAsGood.id,
  swirled: swirlsEvenOut.id,
  crossed: swirlsEvenOut.id,
};

/** Look at a combed bed; what would you change before the tile goes on? */
export const whatToChange = template({
  id: 'combing/what-to-change',
  outcomes: ['straight-one-way', 'along-the-short-side'],
  ideas: ['along-as-good', 'swirls-even-out'],
  draw: (draw) => {
    const tile = draw.stock(oblong);
    return { tile, fault: draw.pick(faults), upright: draw.chance(0.5) };
  },
  pose: ({ tile, fault, upright }, say) => {
    const shape = upright ? { lengthMm: tile.widthMm, widthMm: tile.lengthMm } : tile;
    const shortDeg = upright ? 0 : 90;
    const todo: Record<Fault, string> = { good: 'leave', turned: 'turn', swirled: 'straighten', crossed: 'one-way' };
    const others = faults.filter((one) => one !== fault);
    return {
      story: [say.t('story', { tile: say.tile(tile.lengthMm, tile.widthMm) })],
      ask: say.t('ask'),
      picture: {
        kind: 'comb',
        ...shape,
        pattern: fault === 'swirled' ? 'swirl' : fault === 'crossed' ? 'crossed' : 'straight',
        directionDeg: fault === 'turned' ? (shortDeg + 90) % 180 : shortDeg,
        pitchMm: 25.4,
        lettered: false,
        words: say.t(`picture-${fault}`),
      },
      answer: {
        kind: 'one',
        right: say.t(todo[fault]),
        wrong: others.map((one) => ({
          text: say.t(todo[one]),
          idea: one === 'good' ? blind[fault] : null,
        })),
      },
      why: [say.t(`why-${fault}`)],
      rules: ['comb.straight', 'comb.short-side'],
    };
  },
});
