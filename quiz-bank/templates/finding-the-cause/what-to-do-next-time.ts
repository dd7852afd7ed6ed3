import { template } from '../../engine/template.ts';
import { failures } from '../../jobs/failures.ts';
import { blameTheNotch } from '../../wrong-ideas/blame-the-notch.ts';
import { hollowIsLoose } from '../../wrong-ideas/hollow-is-loose.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';

const known = failures.filter(({ name }) => name !== blameTheNotch.cause);

/** From the signs straight to what the crew changes. */
export const whatToDoNextTime = template({
  id: 'finding-the-cause/what-to-do-next-time',
  outcomes: ['side-it-stayed-on', 'rule-out-causes'],
  ideas: ['blame-the-notch', 'pressing-is-enough', 'hollow-is-loose'],
  draw: (draw) => {
    const failure = draw.pick(known);
    const clips = draw.chance(0.5);
    return { failure, clips, other: draw.pick(known.filter(({ name }) => name !== failure.name)) };
  },
  pose: ({ failure, clips, other }, say) => ({
    story: [say.t(`found-${failure.name}`), say.t(clips ? 'clips' : 'no-clips')],
    ask: say.t('ask'),
    answer: {
      kind: 'one',
      right: say.t(`do-${failure.name}`),
      wrong: [
        { text: say.t(`do-${other.name}`), idea: null },
        { text: say.t('do-notch'), idea: blameTheNotch.id },
        { text: say.t('do-press'), idea: pressingIsEnough.id },
        { text: say.t('do-tap'), idea: hollowIsLoose.id },
      ],
    },
    why: [say.t(`why-${failure.name}`), ...(clips ? [say.t('why-clips')] : [])],
    rules: [failure.rule],
  }),
});
