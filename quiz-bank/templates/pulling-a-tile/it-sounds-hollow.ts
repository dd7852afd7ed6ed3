import { judgePull } from '../../../simulations/judge/judge.ts';
import { template } from '../../engine/template.ts';
import { wholePull } from '../../../simulations/judge/whole-pull.ts';
import { hollowIsLoose } from '../../wrong-ideas/hollow-is-loose.ts';

const bases = ['board', 'mat', 'slab'] as const;

/** A sound, and perhaps some lifted tiles: what follows? */
export const itSoundsHollow = template({
  id: 'pulling-a-tile/it-sounds-hollow',
  outcomes: ['hollow-sound', 'how-many-to-lift'],
  ideas: ['hollow-is-loose'],
  draw: (draw) => {
    const base = draw.pick(bases);
    const lifted = draw.chance(0.35) ? 0 : 3;
    const hollow = draw.chance(0.6);
    const good = draw.chance(0.5);
    const shares = Array.from({ length: lifted }, () => draw.whole(good ? 86 : 52, good ? 98 : 72) / 100);
    if (lifted === 0 && !hollow) return null;
    const { verdict } = judgePull(
      wholePull({
        hollowSound: hollow,
        overMembrane: base !== 'slab',
        pulls: shares.map((coverage) => ({ coverage })),
      }),
    );
    return { base, hollow, shares, verdict };
  },
  pose: ({ base, hollow, shares, verdict }, say) => {
    const says = { pass: 'leave', fail: 'redo', 'not-enough': 'lift' } as const;
    // The holder goes by the sound: hollow is torn out, sound is left.
    const holder = hollowIsLoose.condemns(hollow ? 1 : 0) ? 'fail' : 'pass';
    return {
      story: [
        say.t(`base-${base}`),
        say.t(hollow ? 'hollow' : 'sound'),
        say.t(shares.length === 0 ? 'none' : 'lifted', { shares: shares.map(say.share).join(', ') }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: say.t(says[verdict]),
        wrong: (['pass', 'fail', 'not-enough'] as const)
          .filter((one) => one !== verdict)
          .map((one) => ({ text: say.t(says[one]), idea: one === holder ? hollowIsLoose.id : null })),
      },
      why: [say.t(`why-${verdict}`)],
      rules: ['sampling.sound', 'sampling.tiles', 'coverage.dry'],
    };
  },
});
