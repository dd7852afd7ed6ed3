import { template } from '../../engine/template.ts';
import { apart } from '../../jobs/apart.ts';
import type { Method } from '../../runs/methods.ts';
import { BASES, shelfRun } from '../../runs/shelf.ts';
import { alongAsGood } from '../../wrong-ideas/along-as-good.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';
import type { IdeaId } from '../../wrong-ideas/idea.ts';

const ways: readonly Method[] = ['press', 'along', 'across', 'worked'];

/** The same bed, four ways to set on it: which coverage belongs to this one? */
export const whatItComesTo = template({
  id: 'setting/what-it-comes-to',
  outcomes: ['press-and-move', 'across-the-ridges', 'judge-coverage'],
  ideas: ['pressing-is-enough', 'along-as-good'],
  draw: (draw) => {
    const base = draw.whole(0, BASES - 1);
    const runs = ways.map((way) => shelfRun(base, way));
    return apart(
      runs.map(({ coverage }) => Math.round(coverage * 100)),
      0.045,
    )
      ? { runs, method: draw.pick(ways) }
      : null;
  },
  pose: ({ runs, method }, say) => {
    const job = runs[0]?.job;
    const asked = runs.find((run) => run.method === method);
    if (!job || !asked) throw new Error('A run is missing from the shelf.');
    // Who takes pressing for enough sees the full bed; who takes along for across sees the other push.
    const idea = (other: Method): IdeaId | null =>
      method === 'press' && other === 'worked'
        ? pressingIsEnough.id
        : method === 'along' && other === 'across'
          ? alongAsGood.id
          : null;
    return {
      story: [
        say.t('story', {
          tile: say.tile(job.lengthMm, job.widthMm),
          notch: say.notch(job.trowel),
          angle: job.trowel.angleDeg,
        }),
        say.t(`way-${method}`, { push: say.length(job.trowel.widthMm / 3) }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: say.share(asked.coverage),
        wrong: runs
          .filter((run) => run !== asked)
          .map((run) => ({ text: say.share(run.coverage), idea: idea(run.method) })),
      },
      why: runs.map((run) => say.t(`why-${run.method}`, { share: say.share(run.coverage) })),
      rules: ['set.across', 'set.travel', 'model.pressing'],
      whyPicture: {
        kind: 'pull',
        lengthMm: job.lengthMm,
        widthMm: job.widthMm,
        pull: asked.pull,
        lettered: false,
        words: say.t('picture', { share: say.share(asked.coverage) }),
        long: '',
      },
    };
  },
});
