import { template } from '../../engine/template.ts';
import { oblong } from '../../jobs/tiles.ts';
import { drawBearings, sayBearings } from '../../jobs/bearings.ts';
import { alongAsGood } from '../../wrong-ideas/along-as-good.ts';
import { swirlsEvenOut } from '../../wrong-ideas/swirls-even-out.ts';
import { skinIsFine } from '../../wrong-ideas/skin-is-fine.ts';
import { backCoatCounts } from '../../wrong-ideas/back-coat-counts.ts';
import type { IdeaId } from '../../wrong-ideas/idea.ts';

/** Ways to say a well combed patch; combed the wrong way round, the same words describe a bad one. */
const combs = ['comb-0', 'comb-1', 'comb-2'] as const;
const faults = ['swirl', 'bare', 'skin'] as const;
const ideas: Record<(typeof faults)[number], IdeaId> = {
  swirl: swirlsEvenOut.id,
  bare: backCoatCounts.id,
  skin: skinIsFine.id,
};

/** Tick the helpers whose combed patch you would set on. */
export const whichPatchesPass = template({
  id: 'combing/which-patches-pass',
  outcomes: ['key-coat-first', 'straight-one-way', 'skin-test'],
  ideas: ['along-as-good', 'swirls-even-out', 'back-coat-counts', 'skin-is-fine'],
  draw: (draw) => {
    const [first, second, third] = draw.shuffled(combs);
    const twice = draw.chance(0.5);
    return {
      tile: draw.stock(oblong),
      bearings: drawBearings(draw),
      good: twice ? [first, second] : [first],
      turned: twice ? [third] : [second, third],
      bad: draw.some(faults, 1),
    };
  },
  pose: ({ tile, bearings, good, turned, bad }, say) => {
    const { along, across } = sayBearings(bearings, say);
    const says = (name = '', way = across) => say.t(name, { way });
    return {
      story: [say.t('story', { tile: say.tile(tile.lengthMm, tile.widthMm), along })],
      ask: say.t('ask'),
      answer: {
        kind: 'all',
        boxes: [
          ...good.map((name) => ({ text: says(name), right: true, idea: null })),
          ...turned.map((name) => ({ text: says(name, along), right: false, idea: alongAsGood.id })),
          ...bad.map((name) => ({ text: says(name), right: false, idea: ideas[name] })),
        ],
      },
      why: [says('why-turned', along), ...bad.map((name) => says(`why-${name}`))],
      rules: ['comb.straight', 'comb.short-side', 'comb.to-the-line', 'time.finger', 'comb.key-coat'],
    };
  },
});
