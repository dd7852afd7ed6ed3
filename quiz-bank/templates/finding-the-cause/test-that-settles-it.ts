import { template } from '../../engine/template.ts';
import { failures } from '../../jobs/failures.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { hollowIsLoose } from '../../wrong-ideas/hollow-is-loose.ts';

const tested = failures.filter(({ name }) =>
  ['skinned', 'sealed-slab', 'wet-back', 'powder', 'board-seam', 'not-moved'].includes(name),
);

/** Which simple test tells whether a suspected cause is the cause. */
export const testThatSettlesIt = template({
  id: 'finding-the-cause/test-that-settles-it',
  outcomes: ['rule-out-causes', 'hollow-sound'],
  ideas: ['hollow-is-loose', 'bigger-is-safer'],
  draw: (draw) => {
    const failure = draw.pick(tested);
    return {
      failure,
      told: draw.whole(0, 1),
      others: draw.some(
        tested.filter(({ name }) => name !== failure.name),
        1,
      ),
    };
  },
  pose: ({ failure, told, others }, say) => ({
    story: [say.t(`suspect-${failure.name}-${told}`)],
    ask: say.t('ask'),
    answer: {
      kind: 'one',
      right: say.t(`test-${failure.name}`),
      wrong: [
        ...others.map(({ name }) => ({ text: say.t(`test-${name}`), idea: null })),
        { text: say.t('tap'), idea: hollowIsLoose.id },
        { text: say.t('notch'), idea: biggerIsSafer.id },
      ],
    },
    why: [say.t(`why-${failure.name}`)],
    rules: [failure.rule, 'sampling.sound'],
  }),
});
