import { template } from '../../engine/template.ts';
import { failures } from '../../jobs/failures.ts';
import { blameTheNotch } from '../../wrong-ideas/blame-the-notch.ts';

/** A lifted tile, its signs, the cause. */
export const readTheSigns = template({
  id: 'finding-the-cause/read-the-signs',
  outcomes: ['side-it-stayed-on', 'ridges-as-evidence', 'rule-out-causes'],
  ideas: ['blame-the-notch'],
  draw: (draw) => {
    const failure = draw.pick(failures);
    const others = failures.filter(({ name }) => name !== failure.name && name !== blameTheNotch.cause);
    return { failure, told: draw.whole(0, 1), others: draw.some(others, failure.name === blameTheNotch.cause ? 3 : 2) };
  },
  pose: ({ failure, told, others }, say) => ({
    story: [say.t(`signs-${failure.name}-${told}`)],
    ask: say.t('ask'),
    answer: {
      kind: 'one',
      right: say.t(`cause-${failure.name}`),
      wrong: [
        ...others.map(({ name }) => ({ text: say.t(`cause-${name}`), idea: null })),
        ...(failure.name === blameTheNotch.cause
          ? []
          : [{ text: say.t(`cause-${blameTheNotch.cause}`), idea: blameTheNotch.id }]),
      ],
    },
    why: [say.t(`why-${failure.name}`)],
    rules: [failure.rule],
  }),
});
