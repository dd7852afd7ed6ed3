import { template } from '../../engine/template.ts';
import { blameTheNotch } from '../../wrong-ideas/blame-the-notch.ts';
import { hollowIsLoose } from '../../wrong-ideas/hollow-is-loose.ts';
import { swirlsEvenOut } from '../../wrong-ideas/swirls-even-out.ts';
import type { IdeaId } from '../../wrong-ideas/idea.ts';

/** What may be found; each is drawn as a fault or as sound work. */
const finds = ['seams', 'fasteners', 'comb', 'contact', 'span', 'damp'] as const;
/** The idea that would overlook a fault. */
const overlooks: Partial<Record<(typeof finds)[number], IdeaId>> = {
  seams: blameTheNotch.id,
  fasteners: blameTheNotch.id,
  span: blameTheNotch.id,
  damp: blameTheNotch.id,
  comb: swirlsEvenOut.id,
};

/** A floor that came loose: tick every find that can have had a part in it. */
export const looseKitchen = template({
  id: 'finding-the-cause/loose-kitchen',
  outcomes: ['rule-out-causes', 'ridges-as-evidence'],
  ideas: ['blame-the-notch', 'swirls-even-out', 'hollow-is-loose'],
  draw: (draw) => ({
    shown: draw.some(finds, 4).map((find) => ({ find, bad: draw.chance(0.6) })),
    months: draw.pick([14, 20, 28, 34]),
    hollow: draw.chance(0.7),
  }),
  pose: ({ shown, months, hollow }, say) => ({
    story: [say.t('story', { months })],
    ask: say.t('ask'),
    answer: {
      kind: 'all',
      boxes: [
        ...shown.map(({ find, bad }) => ({
          text: say.t(`${find}-${bad ? 'bad' : 'good'}`),
          right: bad,
          idea: bad ? (overlooks[find] ?? null) : null,
        })),
        // A sound is a sign, never a cause.
        ...(hollow ? [{ text: say.t('hollow'), right: false, idea: hollowIsLoose.id }] : []),
      ],
    },
    why: [
      ...shown.filter(({ bad }) => bad).map(({ find }) => say.t(`why-${find}`)),
      ...(hollow ? [say.t('why-hollow')] : []),
    ],
    rules: ['board.bed', 'board.fasteners', 'comb.straight', 'substrate.stiffness', 'sampling.sound', 'coverage.dry'],
  }),
});
