import { methodFor } from '../../../simulations/estimate/setting.ts';
import { nameNotch } from '../../../simulations/estimate/notches.ts';
import { isPanel } from '../../../simulations/estimate/tile-facts.ts';
import { inches } from '../../../simulations/units/length.ts';
import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { drawnArea } from '../../jobs/area.ts';
import { square } from '../../jobs/trowels.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';

const pieces = [
  { name: 'tile', length: 24, width: 12, thickness: 3 / 8 },
  { name: 'tile', length: 36, width: 8, thickness: 3 / 8 },
  { name: 'long', length: 60, width: 12, thickness: 3 / 8 },
  { name: 'long', length: 72, width: 8, thickness: 3 / 8 },
  { name: 'panel', length: 96, width: 40, thickness: 7 / 32 },
  { name: 'panel', length: 118, width: 39, thickness: 7 / 32 },
] as const;

/** Slide it, collapse it, walk it in or vibrate it: by size and place. */
export const howItIsSet = template({
  id: 'large-tile-and-panels/how-it-is-set',
  outcomes: ['panel-embedding', 'room-to-slide', 'both-faces'],
  ideas: ['pressing-is-enough', 'bigger-is-safer'],
  draw: (draw) => {
    const piece = draw.pick(pieces);
    const surface = draw.pick(['floor', 'wall'] as const);
    const area = drawnArea({
      surface,
      tile: {
        lengthMm: inches(piece.length),
        widthMm: inches(piece.width),
        thicknessMm: inches(piece.thickness),
        edge: 'rectified',
      },
    });
    const notch = nameNotch({ ...square(1 / 2), shape: piece.name === 'tile' ? 'square' : 'slanted' });
    const { method, rule } = methodFor(area, notch);
    return { piece, surface, method, rule, panel: isPanel(area.tile) };
  },
  pose: ({ piece, surface, method, rule, panel }, say) => {
    const others = (['slide', 'collapse', 'walk-in', 'vibrate'] as const).filter((one) => one !== method);
    const near = method === 'walk-in' ? 'vibrate' : method === 'vibrate' ? 'walk-in' : others[0];
    return {
      story: [
        say.t(panel ? 'story-panel' : 'story', {
          tile: say.tile(inches(piece.length), inches(piece.width)),
          thick: say.length(inches(piece.thickness)),
          surface: say.t(surface),
        }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: say.t(method),
        wrong: [
          { text: say.t(near ?? 'slide'), idea: null },
          { text: say.t('press'), idea: pressingIsEnough.id },
          { text: say.t('bigger'), idea: biggerIsSafer.id },
        ],
      },
      why: [
        say.t(`why-${method}`, { edge: say.length(valueOf('set.long-edge', 'edge')) }),
        ...(panel ? [say.t('hands')] : []),
      ],
      rules: panel ? [rule, 'panel.both-faces', 'safety.panels'] : [rule],
    };
  },
});
