import { allowedWarp } from '../../../simulations/estimate/tile-facts.ts';
import { template } from '../../engine/template.ts';
import { drawnArea } from '../../jobs/area.ts';
import { pressOutTheBow } from '../../wrong-ideas/press-out-the-bow.ts';

/** Is the bow of this tile inside what its class may have? */
export const withinItsLimit = template({
  id: 'bowed-tile/within-its-limit',
  outcomes: ['measure-warp'],
  ideas: ['press-out-the-bow'],
  draw: (draw) => {
    const lengthMm = draw.size([6, 8, 12, 18, 24, 36]);
    const edge = draw.pick(['rectified', 'calibrated'] as const);
    const { tile } = drawnArea({ tile: { lengthMm, widthMm: lengthMm / 2, edge } });
    const limit = allowedWarp(tile, lengthMm, 'north-america');
    const other = allowedWarp(
      { ...tile, edge: edge === 'rectified' ? 'calibrated' : 'rectified' },
      lengthMm,
      'north-america',
    ).mm;
    const measuredMm = draw.step(0.3, 3, 0.1);
    return [limit.mm, other].every((one) => Math.abs(measuredMm / one - 1) > 0.12)
      ? { lengthMm, edge, measuredMm, limit, other }
      : null;
  },
  pose: ({ lengthMm, edge, measuredMm, limit, other }, say) => {
    const passes = measuredMm <= limit.mm;
    const reason = (value: number) => say.t(measuredMm <= value ? 'under' : 'over', { limit: say.gap(value) });
    return {
      story: [say.t('story', { length: say.length(lengthMm), edge: say.t(edge), measured: say.gap(measuredMm) })],
      ask: say.t('ask'),
      picture: {
        kind: 'gap',
        lengthMm,
        bowMm: measuredMm,
        bedMm: 1,
        words: say.t('picture', { measured: say.gap(measuredMm) }),
      },
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: passes ? null : pressOutTheBow.id,
        right: reason(limit.mm),
        wrong: [
          { text: reason(other), idea: null },
          { text: say.t('pressed'), idea: pressOutTheBow.id },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [say.t('why', { edge: say.t(edge), limit: say.gap(limit.mm) })],
      rules: [limit.rule],
    };
  },
});
