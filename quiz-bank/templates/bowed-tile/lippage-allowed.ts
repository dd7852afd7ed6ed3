import { lippageLimit } from '../../../simulations/estimate/joint-limits.ts';
import { allowedWarp } from '../../../simulations/estimate/tile-facts.ts';
import { template } from '../../engine/template.ts';
import { drawnArea } from '../../jobs/area.ts';
import { tiles } from '../../jobs/tiles.ts';
import { allowedForMeasured } from '../../wrong-ideas/allowed-for-measured.ts';

/** How much two edges may differ, with the bow that was measured. */
export const lippageAllowed = template({
  id: 'bowed-tile/lippage-allowed',
  outcomes: ['lippage-allowed', 'measure-warp'],
  ideas: ['allowed-for-measured'],
  draw: (draw) => {
    const size = draw.stock(tiles);
    const jointMm = draw.size([1 / 8, 3 / 16, 1 / 4, 5 / 16]);
    const edge = draw.pick(['rectified', 'calibrated'] as const);
    const area = drawnArea({ jointMm, tile: { ...size, edge, measuredBowMm: draw.step(0.2, 1, 0.1) } });
    const measuredMm = area.tile.measuredBowMm ?? 0;
    const allowedMm = allowedWarp(area.tile, Math.max(size.lengthMm, size.widthMm), 'north-america').mm;
    const limit = lippageLimit(area, 'north-america');
    if (!limit || measuredMm >= allowedMm - 0.3) return null;
    return { ...size, jointMm, measuredMm, allowedMm, value: limit.value, rule: limit.rule };
  },
  pose: ({ lengthMm, widthMm, jointMm, measuredMm, allowedMm, value, rule }, say) => {
    const free = value - measuredMm;
    return {
      story: [say.t('story', { tile: say.tile(lengthMm, widthMm), joint: say.length(jointMm) })],
      facts: [
        [say.t('measured'), say.gap(measuredMm)],
        [say.t('allowed'), say.gap(allowedMm)],
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'gap',
        value,
        tolerance: 0.12,
        digits: say.units === 'imperial' ? 3 : 1,
        ideas: [{ idea: allowedForMeasured.id, value: free + allowedForMeasured.bowMm({ measuredMm, allowedMm }) }],
      },
      why: [
        say.t('why', {
          joint: say.length(jointMm),
          free: say.marked(free),
          measured: say.gap(measuredMm),
          sum: say.gap(value),
        }),
      ],
      rules: [rule, 'lippage.actual'],
    };
  },
});
