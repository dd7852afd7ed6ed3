import { jointLimit } from '../../../simulations/estimate/joint-limits.ts';
import { allowedWarp } from '../../../simulations/estimate/tile-facts.ts';
import { template } from '../../engine/template.ts';
import { drawnArea } from '../../jobs/area.ts';
import { tile } from '../../jobs/tiles.ts';
import { allowedForMeasured } from '../../wrong-ideas/allowed-for-measured.ts';
import { pressOutTheBow } from '../../wrong-ideas/press-out-the-bow.ts';

/** The narrowest joint for long tile in a running bond. */
export const jointForARunningBond = template({
  id: 'large-tile-and-panels/joint-for-a-running-bond',
  outcomes: ['lippage-allowed', 'offset-allowed', 'room-to-slide'],
  ideas: ['allowed-for-measured', 'press-out-the-bow'],
  draw: (draw) => {
    const size = draw.stock([tile(24, 12), tile(24, 6), tile(36, 6), tile(36, 8), tile(48, 8)]);
    const edge = draw.pick(['rectified', 'calibrated'] as const);
    const area = drawnArea({
      pattern: 'offset',
      offsetShare: 1 / 3,
      tile: {
        ...size,
        edge,
        measuredBowMm: draw.step(0.4, 1.2, 0.1),
        sizeVariationMm: 0.3,
      },
    });
    const measuredMm = area.tile.measuredBowMm ?? 0;
    const allowedMm = allowedWarp(area.tile, size.lengthMm, 'north-america').mm;
    const limit = jointLimit(area, 'north-america');
    return !limit || limit.rule !== 'joint.running-bond' || allowedMm - measuredMm < 0.5
      ? null
      : { ...size, edge, measuredMm, allowedMm, value: limit.value };
  },
  pose: ({ lengthMm, widthMm, edge, measuredMm, allowedMm, value }, say) => {
    const base = value - measuredMm;
    return {
      story: [say.t('story', { tile: say.tile(lengthMm, widthMm), edge: say.t(edge) })],
      facts: [
        [say.t('measured'), say.gap(measuredMm)],
        [say.t('allowed'), say.gap(allowedMm)],
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'number',
        quantity: 'gap',
        value,
        tolerance: 0.2,
        digits: say.units === 'imperial' ? 3 : 1,
        ideas: [
          { idea: allowedForMeasured.id, value: base + allowedForMeasured.bowMm({ measuredMm, allowedMm }) },
          ...(measuredMm > 0.45 ? [{ idea: pressOutTheBow.id, value: base + pressOutTheBow.bowLeftMm() }] : []),
        ],
      },
      why: [
        say.t('why', { base: say.length(base), edge: say.t(edge), measured: say.gap(measuredMm), sum: say.gap(value) }),
      ],
      rules: ['joint.running-bond', 'lippage.actual'],
    };
  },
});
