import { bedNeed } from '../../../simulations/estimate/bed-need.ts';
import { chooseNotch } from '../../../simulations/estimate/choose-notch.ts';
import { coverageToReach } from '../../../simulations/estimate/coverage-to-reach.ts';
import { mostBed } from '../../../simulations/estimate/mortar-kind.ts';
import { notchesFor } from '../../../simulations/estimate/notches.ts';
import { template } from '../../engine/template.ts';
import { drawnArea } from '../../jobs/area.ts';
import { tile } from '../../jobs/tiles.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';
import { vLikeSquare } from '../../wrong-ideas/v-like-square.ts';

/** Which notch for a sheet of small tile, and are its ridges left standing? */
export const notchForASheet = template({
  id: 'small-tile-and-mosaics/notch-for-a-sheet',
  outcomes: ['flatten-ridges', 'glass-tile', 'squeeze-up'],
  ideas: ['bigger-is-safer', 'v-like-square', 'pressing-is-enough'],
  draw: (draw) => {
    const glass = draw.chance(0.25);
    const exposure = draw.pick(['interior-dry', 'interior-wet'] as const);
    const pieceMm = draw.size([3 / 4, 1, 2, 2, 2.25]);
    const thicknessMm = draw.size([3 / 16, 1 / 4, 5 / 16]);
    const area = drawnArea({
      exposure,
      jointMm: draw.size([1 / 16, 1 / 8]),
      tile: { material: glass ? 'glass' : 'mosaic', ...draw.stock([tile(12, 12)]), pieceMm, thicknessMm },
    });
    const minCoverage = coverageToReach({
      standards: 'north-america',
      exposure,
      surface: 'wall',
      kind: glass ? 'glass' : 'tile',
      thicknessMm,
    }).value;
    const question = {
      area,
      standards: 'north-america' as const,
      need: bedNeed(area, 'north-america'),
      minCoverage,
      mostMm: mostBed('thin-set'),
    };
    const { pick, rejected } = chooseNotch(question, draw.sold(notchesFor('north-america', null)));
    const refused = rejected
      .filter(({ refusal }) => refusal !== null)
      .map(({ notch }) => ({ ...notch, angleDeg: 60, wearMm: 0 }));
    const veeRefused = refused.find(({ shape }) => shape === 'v');
    const tooMuch = refused.filter(({ shape, widthMm }) => shape === 'square' && widthMm >= 6);
    // Most sheets want their ridges levelled; those that don't are drawn more often, or one answer would always do.
    if (!pick || tooMuch.length === 0 || !draw.chance(pick.flatten ? 0.4 : 1)) return null;
    return {
      glass,
      exposure,
      pieceMm,
      thicknessMm,
      jointMm: area.jointMm,
      right: { ...pick.notch, angleDeg: 60, wearMm: 0 },
      flatten: pick.flatten,
      vee: veeRefused ?? null,
      biggest: biggerIsSafer.picks(tooMuch),
      minCoverage,
    };
  },
  pose: ({ glass, exposure, pieceMm, thicknessMm, jointMm, right, flatten, vee, biggest, minCoverage }, say) => {
    const says = (trowel: typeof right, flat: boolean) =>
      say.t(flat ? 'flat' : 'standing', { notch: say.notch(trowel) });
    return {
      story: [
        say.t(glass ? 'story-glass' : 'story', {
          piece: say.length(pieceMm),
          thick: say.length(thicknessMm),
          joint: say.length(jointMm),
          place: say.t(exposure),
        }),
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: says(right, flatten),
        wrong: [
          { text: says(right, !flatten), idea: flatten ? pressingIsEnough.id : null },
          { text: says(biggest, false), idea: biggerIsSafer.id },
          ...(vee && right.shape !== 'v'
            ? [{ text: says(vee, false), idea: vLikeSquare.id }]
            : [{ text: says(biggest, true), idea: biggerIsSafer.id }]),
        ],
      },
      why: [
        say.t('why', { notch: say.notch(right), need: say.share(minCoverage) }),
        say.t(glass ? 'why-glass' : flatten ? 'why-flat' : 'why-standing', { need: say.share(minCoverage) }),
      ],
      rules: [
        'bed.need',
        'mosaic.flatten',
        'mosaic.rise',
        ...(glass ? (['glass.flatten', 'glass.mortar'] as const) : []),
      ],
    };
  },
});
