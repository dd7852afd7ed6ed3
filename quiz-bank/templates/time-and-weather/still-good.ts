import { template } from '../../engine/template.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';
import { skinIsFine } from '../../wrong-ideas/skin-is-fine.ts';
import { waterBringsItBack } from '../../wrong-ideas/water-brings-it-back.ts';

/** Ridges, an age, a finger: set or scrape. */
export const stillGood = template({
  id: 'time-and-weather/still-good',
  outcomes: ['skin-test', 'open-time'],
  ideas: ['skin-is-fine', 'water-brings-it-back', 'pressing-is-enough'],
  draw: (draw) => {
    const openMin = draw.pick([10, 15, 20, 30]);
    const ageMin = draw.pick([3, 5, 8, 12, 16, 18, 25, 28, 35, 40]);
    const wet = draw.chance(0.5);
    // A finger that stays clean decides whatever the clock says; a wet one is only asked about inside the open time.
    return (wet && ageMin > openMin) || (!wet && draw.chance(0.4))
      ? null
      : { openMin, ageMin, wet, looks: draw.chance(0.5) };
  },
  pose: ({ openMin, ageMin, wet, looks }, say) => {
    const inside = ageMin <= openMin;
    return {
      story: [
        say.t('story', {
          age: say.number(ageMin, 'minutes', 0),
          open: say.number(openMin, 'minutes', 0),
          looks: say.t(looks ? 'shiny' : 'dull'),
          finger: say.t(wet ? 'wet' : 'clean'),
        }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes: wet,
        verdictIdea: wet ? null : skinIsFine.id,
        right: say.t(wet ? 'reason-wet' : 'reason-clean'),
        wrong: [
          { text: say.t(wet ? 'reason-clean' : 'reason-wet'), idea: wet ? null : skinIsFine.id },
          { text: say.t(inside ? 'reason-clock' : 'reason-looks'), idea: wet ? null : skinIsFine.id },
          looks
            ? { text: say.t('reason-water'), idea: waterBringsItBack.id }
            : { text: say.t('reason-press'), idea: pressingIsEnough.id },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [say.t(wet ? 'why-wet' : 'why-clean')],
      rules: ['time.finger', 'time.no-skin', 'class.open'],
    };
  },
});
