import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { template } from '../../engine/template.ts';
import { eightyAnywhere } from '../../wrong-ideas/eighty-anywhere.ts';
import { mortarLevels } from '../../wrong-ideas/mortar-levels.ts';

/** A glass tile lifted: share and thickness of what holds it. */
export const glassOnItsBed = template({
  id: 'small-tile-and-mosaics/glass-on-its-bed',
  outcomes: ['glass-tile', 'bed-thickness-limits'],
  ideas: ['eighty-anywhere', 'mortar-levels'],
  draw: (draw) => {
    const share = draw.pick([0.4, 0.55, 0.82, 0.86, 0.9, 0.97, 0.98, 0.99]);
    const bedMm = draw.size([1 / 8, 1 / 8, 5 / 32, 3 / 16, 3 / 8, 1 / 2, 3 / 4]);
    const need = valueOf('coverage.glass', 'share');
    const most = valueOf('bed.most-thin-set', 'bed');
    const full = share >= need;
    const thin = bedMm <= most;
    // Passing and failing about as often; a tile that fails twice would have two right reasons.
    return !full && !thin
      ? null
      : full && thin
        ? { share, bedMm, need, most, full, thin }
        : draw.chance(0.5)
          ? { share, bedMm, need, most, full, thin }
          : null;
  },
  pose: ({ share, bedMm, need, most, full, thin }, say) => {
    const passes = full && thin;
    const values = {
      share: say.share(share),
      need: say.share(need),
      bed: say.length(bedMm),
      most: say.length(most),
      eighty: say.share(eightyAnywhere.required()),
    };
    const right = !full ? 'bare' : !thin ? 'thick' : 'fine';
    return {
      story: [say.t('story', values)],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea:
          right === 'bare' && share >= eightyAnywhere.required()
            ? eightyAnywhere.id
            : right === 'thick'
              ? mortarLevels.id
              : null,
        right: say.t(right, values),
        wrong: [
          ...['bare', 'thick', 'fine']
            .filter((one) => one !== right)
            .map((one) => ({ text: say.t(one, values), idea: null })),
          right === 'thick'
            ? { text: say.t('any-thick'), idea: mortarLevels.id }
            : { text: say.t('eighty', values), idea: eightyAnywhere.id },
        ],
      },
      why: [say.t(`why-${right}`, values)],
      rules: ['coverage.glass', 'bed.most-thin-set', 'glass.mortar'],
    };
  },
});
