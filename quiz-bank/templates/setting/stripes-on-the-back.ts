import { template } from '../../engine/template.ts';
import { pullPicture } from '../../jobs/pull-picture.ts';
import type { Method } from '../../runs/methods.ts';
import { BASES, mirrored, shelfRun } from '../../runs/shelf.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { blameTheNotch } from '../../wrong-ideas/blame-the-notch.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';

const ways: readonly Method[] = ['press', 'across', 'worked', 'swirl'];

/** Look at a lifted tile and say what the next one gets. */
export const stripesOnTheBack = template({
  id: 'setting/stripes-on-the-back',
  outcomes: ['press-and-move', 'where-air-goes', 'ridges-as-evidence'],
  ideas: ['blame-the-notch', 'pressing-is-enough', 'bigger-is-safer'],
  draw: (draw) => {
    const method = draw.pick(ways);
    const run = mirrored(shelfRun(draw.whole(0, BASES - 1), method), draw.chance(0.5), draw.chance(0.5));
    if (method === 'across' && run.coverage > 0.85) return null;
    return { run, next: method === 'worked' ? 'same' : method === 'swirl' ? 'straight' : 'move' };
  },
  pose: ({ run, next }, say) => {
    const others = ['same', 'straight', 'move'].filter((one) => one !== next);
    return {
      story: [say.t('story', { tile: say.tile(run.job.lengthMm, run.job.widthMm), notch: say.notch(run.job.trowel) })],
      ask: say.t('ask'),
      picture: pullPicture(run, say, false, say.t(`seen-${next}`)),
      answer: {
        kind: 'one',
        right: say.t(next),
        wrong: [
          ...others.map((one) => ({ text: say.t(one), idea: null })),
          { text: say.t('bigger'), idea: next === 'same' ? biggerIsSafer.id : blameTheNotch.id },
          { text: say.t('harder'), idea: pressingIsEnough.id },
        ],
      },
      why: [say.t(`why-${next}`, { share: say.share(run.coverage) })],
      rules: ['set.across', 'comb.straight'],
    };
  },
});
