import { template } from '../../engine/template.ts';
import { pullPicture } from '../../jobs/pull-picture.ts';
import type { Method } from '../../runs/methods.ts';
import { BASES, mirrored, shelfRun } from '../../runs/shelf.ts';
import { swirlsEvenOut } from '../../wrong-ideas/swirls-even-out.ts';

const ways: readonly Method[] = ['press', 'worked', 'swirl', 'crossed'];

/** From the back of a pulled tile to how it was combed and set. */
export const howWasItCombed = template({
  id: 'combing/how-was-it-combed',
  outcomes: ['straight-one-way', 'ridges-as-evidence'],
  ideas: ['swirls-even-out'],
  draw: (draw) => {
    const method = draw.pick(ways);
    return { run: mirrored(shelfRun(draw.whole(0, BASES - 1), method), draw.chance(0.5), draw.chance(0.5)), method };
  },
  pose: ({ run, method }, say) => ({
    story: [say.t('story', { tile: say.tile(run.job.lengthMm, run.job.widthMm) })],
    ask: say.t('ask'),
    picture: pullPicture(run, say, false, say.t(`seen-${method}`)),
    answer: {
      kind: 'one',
      right: say.t(`way-${method}`),
      wrong: ways
        .filter((one) => one !== method)
        .map((one) => ({
          text: say.t(`way-${one}`),
          idea: one === 'swirl' && method === 'worked' ? swirlsEvenOut.id : null,
        })),
    },
    why: [say.t(`why-${method}`, { share: say.share(run.coverage) })],
    rules: ['comb.straight', 'set.across'],
  }),
});
