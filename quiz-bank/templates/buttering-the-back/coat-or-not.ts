import { butterByRule } from '../../../simulations/estimate/setting.ts';
import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { drawnArea } from '../../jobs/area.ts';
import { tile } from '../../jobs/tiles.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { oneChartForAll } from '../../wrong-ideas/one-chart-for-all.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';

const sizes = [tile(6, 6), tile(8, 4), tile(8, 8), tile(12, 12), tile(24, 12), tile(24, 24), tile(36, 6)];

/** Does this tile get a coat on its back, and which rule says so? */
export const coatOrNot = template({
  id: 'buttering-the-back/coat-or-not',
  outcomes: ['when-to-butter', 'back-relief'],
  ideas: ['bigger-is-safer', 'pressing-is-enough', 'one-chart-for-all'],
  draw: (draw) => {
    const size = draw.stock(sizes);
    const reliefMm = draw.pick([0, 0, 0.3, 1.2, 1.5]);
    const exposure = draw.pick(['interior-dry', 'interior-dry', 'exterior'] as const);
    const area = drawnArea({
      exposure,
      tile: { ...size, reliefMm, back: reliefMm > 0 ? 'ribbed' : 'flat' },
    });
    const reason = butterByRule(area, 'north-america');
    const name =
      reason === null
        ? 'none'
        : reason.rule === 'butter.size'
          ? 'size'
          : reason.rule === 'butter.relief'
            ? 'relief'
            : reason.rule === 'butter.for-95'
              ? 'outdoors'
              : null;
    // A tile with two reasons would have two right answers.
    const reasons = [
      Math.max(size.lengthMm, size.widthMm) > valueOf('butter.size', 'edge') + 2,
      reliefMm >= valueOf('butter.relief', 'depth'),
      exposure === 'exterior',
    ];
    if (name === null || reasons.filter(Boolean).length > 1 || (reliefMm > 0 && reliefMm < 1)) return null;
    return draw.chance(name === 'none' ? 1 : 0.55)
      ? { ...size, reliefMm, exposure, name, other: draw.whole(0, 1) }
      : null;
  },
  pose: ({ lengthMm, widthMm, reliefMm, exposure, name, other }, say) => {
    const passes = name !== 'none';
    const values = {
      edge: say.length(valueOf('butter.size', 'edge')),
      depth: say.gap(valueOf('butter.relief', 'depth')),
      share: say.share(valueOf('butter.for-95', 'share')),
    };
    const others = ['none', 'size', 'relief', 'outdoors'].filter((one) => one !== name);
    return {
      story: [
        say.t('story', { tile: say.tile(lengthMm, widthMm), place: say.t(exposure) }),
        reliefMm === 0 ? say.t('back-flat') : say.t('back-ribbed', { relief: say.gap(reliefMm) }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: passes ? pressingIsEnough.id : null,
        right: say.t(`reason-${name}`, values),
        wrong: [
          ...others.slice(other, other + 2).map((one) => ({ text: say.t(`reason-${one}`, values), idea: null })),
          { text: say.t('reason-notch'), idea: biggerIsSafer.id },
          { text: say.t('reason-chart'), idea: oneChartForAll.id },
          { text: say.t('reason-press'), idea: pressingIsEnough.id },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [say.t(`why-${name}`, values)],
      rules: [
        name === 'relief' ? 'butter.relief' : name === 'outdoors' ? 'butter.for-95' : 'butter.size',
        'butter.recommended',
      ],
    };
  },
});
