import { methodFor } from '../../../simulations/estimate/setting.ts';
import { nameNotch } from '../../../simulations/estimate/notches.ts';
import { isPanel } from '../../../simulations/estimate/tile-facts.ts';
import { inches } from '../../../simulations/units/length.ts';
import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { drawnArea } from '../../jobs/area.ts';
import { square } from '../../jobs/trowels.ts';
import { tile } from '../../jobs/tiles.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';

const pieces = [
  { name: 'tile', ...tile(24, 12), thicknessMm: inches(3 / 8) },
  { name: 'tile', ...tile(36, 8), thicknessMm: inches(3 / 8) },
  { name: 'long', ...tile(60, 12), thicknessMm: inches(3 / 8) },
  { name: 'long', ...tile(72, 8), thicknessMm: inches(3 / 8) },
  { name: 'panel', ...tile(96, 40), thicknessMm: inches(7 / 32) },
  { name: 'panel', ...tile(118, 39), thicknessMm: inches(7 / 32) },
] as const;

/** Slide it, collapse it, walk it in or vibrate it: by size and place. */
export const howItIsSet = template({
  id: 'large-tile-and-panels/how-it-is-set',
  outcomes: ['panel-embedding', 'room-to-slide', 'both-faces'],
  ideas: ['pressing-is-enough', 'bigger-is-safer'],
  draw: (draw) => {
    const piece = draw.stock(pieces);
    const surface = draw.pick(['floor', 'wall'] as const);
    const area = drawnArea({
      surface,
      tile: {
        lengthMm: piece.lengthMm,
        widthMm: piece.widthMm,
        thicknessMm: piece.thicknessMm,
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
          tile: say.tile(piece.lengthMm, piece.widthMm),
          thick: say.length(piece.thicknessMm),
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
