import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { backCoatCounts } from '../../wrong-ideas/back-coat-counts.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';

const backs = ['powder', 'wet', 'ribs', 'shallow', 'clean'] as const;
const does = { powder: 'wipe', wet: 'dry', ribs: 'fill', shallow: 'set', clean: 'set' } as const;

/** Look at the back before the tile goes down. */
export const backInTheHand = template({
  id: 'buttering-the-back/back-in-the-hand',
  outcomes: ['back-relief', 'side-it-stayed-on'],
  ideas: ['pressing-is-enough', 'bigger-is-safer', 'back-coat-counts'],
  draw: (draw) => {
    // What to do is drawn first, so that leaving it alone is no better a guess than the rest.
    const todo = draw.pick(['wipe', 'dry', 'fill', 'set'] as const);
    return {
      back: draw.pick(backs.filter((one) => does[one] === todo)),
      told: draw.whole(0, 1),
      ribMm: draw.pick([1.2, 1.4, 1.6]),
      shallowMm: draw.pick([0.2, 0.3, 0.4]),
      other: draw.whole(0, 2),
    };
  },
  pose: ({ back, told, ribMm, shallowMm, other }, say) => {
    const right = does[back];
    const others = (['wipe', 'dry', 'fill', 'set'] as const).filter((one) => one !== right);
    const second = others[other] ?? 'set';
    return {
      story: [say.t(`${back}-${told}`, { ribs: say.gap(ribMm), shallow: say.gap(shallowMm) })],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: say.t(right),
        wrong: [
          {
            text: say.t(second),
            idea:
              second === 'fill' && (back === 'powder' || back === 'wet')
                ? backCoatCounts.id
                : second === 'set'
                  ? pressingIsEnough.id
                  : null,
          },
          { text: say.t('press'), idea: pressingIsEnough.id },
          { text: say.t('bigger'), idea: biggerIsSafer.id },
        ],
      },
      why: [say.t(`why-${back}`, { depth: say.gap(valueOf('butter.relief', 'depth')) })],
      rules: [back === 'powder' ? 'set.powder' : back === 'wet' ? 'set.wet-back' : 'butter.relief'],
    };
  },
});
