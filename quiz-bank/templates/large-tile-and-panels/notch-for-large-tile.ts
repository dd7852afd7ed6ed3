import { bedNeed } from '../../../simulations/estimate/bed-need.ts';
import { chooseNotch } from '../../../simulations/estimate/choose-notch.ts';
import { chooseMortar } from '../../../simulations/estimate/mortar-kind.ts';
import { notchesFor } from '../../../simulations/estimate/notches.ts';
import { coverageToReach } from '../../../simulations/estimate/coverage-to-reach.ts';
import { meanBedMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { drawnArea } from '../../jobs/area.ts';
import { tile } from '../../jobs/tiles.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { pressOutTheBow } from '../../wrong-ideas/press-out-the-bow.ts';

const sizes = [tile(12, 12), tile(13, 13), tile(18, 18), tile(24, 12), tile(24, 24), tile(36, 6)];

/** The notch whose bed covers what this tile and floor can be off, and no more. */
export const notchForLargeTile = template({
  id: 'large-tile-and-panels/notch-for-large-tile',
  outcomes: ['mortar-a-notch-leaves', 'room-to-slide'],
  ideas: ['bigger-is-safer', 'press-out-the-bow'],
  draw: (draw) => {
    const size = draw.stock(sizes);
    const measured = draw.pick([null, 0.2, 0.5, 1, 1.5]);
    const area = drawnArea({
      tile: { ...size, edge: 'calibrated', measuredBowMm: measured },
    });
    const need = bedNeed(area, 'north-america');
    const minCoverage = coverageToReach({
      standards: 'north-america',
      exposure: 'interior-dry',
      surface: 'floor',
      kind: 'tile',
      thicknessMm: 9,
    }).value;
    const mortar = chooseMortar(area, { notch: null, minCoverage: null, mortarClass: null });
    const { pick, rejected } = chooseNotch(
      { area, standards: 'north-america', need, minCoverage, mostMm: mortar.mostMm },
      draw.sold(notchesFor('north-america', null).filter(({ shape }) => shape === 'square')),
    );
    if (!pick || measured === null) return null;
    const refused = (why: string) =>
      rejected
        .filter(({ refusal }) => refusal?.why === why)
        .map(({ notch }) => ({ ...notch, angleDeg: 45, wearMm: 0 }));
    const small = refused('too-little').sort((a, b) => meanBedMm(b) - meanBedMm(a))[0];
    const big = [...refused('not-needed'), ...refused('too-thick')].sort((a, b) => meanBedMm(a) - meanBedMm(b));
    const largest = big.length === 0 ? null : biggerIsSafer.picks(big);
    // Two notches that leave the same are one choice.
    const bedOf = (one: typeof largest): number => (one ? meanBedMm(one) : 0);
    const middle = big.find((one) => meanBedMm(one) < 0.95 * bedOf(largest)) ?? null;
    // No choice within a hair of what is needed, and more than a coin's toss to choose from.
    const shown = [pick.notch, small, largest, middle].flatMap((one) =>
      one ? [meanBedMm({ ...one, angleDeg: 45, wearMm: 0 })] : [],
    );
    if (shown.length < 3 || shown.some((bed) => Math.abs(bed / need.total - 1) < 0.04)) return null;
    return {
      ...size,
      measured,
      need: need.total,
      floor: need.floor + need.sand,
      right: { ...pick.notch, angleDeg: 45, wearMm: 0 },
      small: small ?? null,
      largest,
      middle,
    };
  },
  pose: ({ lengthMm, widthMm, measured, need, floor, right, small, largest, middle }, say) => {
    const wrong = [
      ...(small ? [{ trowel: small, idea: pressOutTheBow.id }] : []),
      ...(largest ? [{ trowel: largest, idea: biggerIsSafer.id }] : []),
      ...(middle ? [{ trowel: middle, idea: biggerIsSafer.id }] : []),
    ];
    return {
      story: [say.t('story', { tile: say.tile(lengthMm, widthMm) })],
      facts: [
        [say.t('bow'), say.gap(measured)],
        [say.t('floor'), say.gap(floor)],
        [say.t('need'), say.gap(need)],
        ...[right, ...wrong.map(({ trowel }) => trowel)]
          .sort((a, b) => a.widthMm * a.depthMm - b.widthMm * b.depthMm)
          .map((trowel): [string, string] => [
            say.t('leaves', { notch: say.notch(trowel) }),
            say.gap(meanBedMm(trowel)),
          ]),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: say.notch(right),
        wrong: wrong.map(({ trowel, idea }) => ({ text: say.notch(trowel), idea })),
      },
      why: [say.t('why', { notch: say.notch(right), bed: say.gap(meanBedMm(right)), need: say.gap(need) })],
      rules: ['bed.need', 'trowel.no-standard'],
    };
  },
});
