import { riseInJoints } from '../../../simulations/mortar/squeeze-up.ts';
import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { meanBedMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { atAngle, narrow, square, squares } from '../../jobs/trowels.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { vLikeSquare } from '../../wrong-ideas/v-like-square.ts';

/** Does the mortar come up through a sheet of small tile? */
export const squeezeUp = template({
  id: 'small-tile-and-mosaics/squeeze-up',
  outcomes: ['squeeze-up'],
  ideas: ['bigger-is-safer', 'v-like-square'],
  draw: (draw) => {
    const trowel = atAngle(
      draw.stock([...squares.slice(2, 4), ...narrow.slice(0, 1), square(3 / 16)]),
      draw.pick([45, 60, 75]),
    );
    const pieceMm = draw.size([3 / 4, 1, 1.5, 2]);
    const jointMm = draw.size([1 / 16, 1 / 8, 3 / 16]);
    const thickMm = draw.size([5 / 32, 3 / 16, 1 / 4, 5 / 16]);
    const bedMm = meanBedMm(trowel);
    const riseMm = riseInJoints({
      combedMm: bedMm,
      bedMm: valueOf('bed.least', 'bed'),
      pieceLengthMm: pieceMm,
      pieceWidthMm: pieceMm,
      jointMm,
    });
    const roomMm = thickMm * valueOf('mosaic.rise', 'share');
    return riseMm < 0.2 ||
      riseMm > 2 * thickMm ||
      Math.abs(riseMm / roomMm - 1) < 0.12 ||
      !draw.chance(riseMm > roomMm ? 0.3 : 1)
      ? null
      : { trowel, pieceMm, jointMm, thickMm, bedMm, riseMm, roomMm };
  },
  pose: ({ trowel, pieceMm, jointMm, thickMm, bedMm, riseMm, roomMm }, say) => {
    const passes = riseMm <= roomMm;
    const reason = (rise: number) =>
      say.t(rise <= roomMm ? 'under' : 'over', { rise: say.gap(rise), room: say.gap(roomMm) });
    const otherRise = Math.max(0.1, passes ? riseMm + roomMm : riseMm - 0.8 * (riseMm - 0.3 * roomMm));
    return {
      story: [
        say.t('story', {
          piece: say.length(pieceMm),
          joint: say.length(jointMm),
          thick: say.length(thickMm),
          notch: say.notch(trowel),
          angle: trowel.angleDeg,
        }),
      ],
      facts: [
        [say.t('bed'), say.gap(bedMm)],
        [say.t('least'), say.gap(valueOf('bed.least', 'bed'))],
        [say.t('room'), say.gap(roomMm)],
        [say.t('factor'), say.number((riseMm / (bedMm - valueOf('bed.least', 'bed'))) * 1, 'times', 1)],
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: passes ? null : biggerIsSafer.id,
        right: reason(riseMm),
        wrong: [
          { text: reason(otherRise), idea: null },
          { text: say.t('more'), idea: biggerIsSafer.id },
          { text: say.t('vee'), idea: vLikeSquare.id },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [
        say.t('why', {
          over: say.gap(bedMm - valueOf('bed.least', 'bed')),
          rise: say.gap(riseMm),
          room: say.gap(roomMm),
        }),
      ],
      rules: ['mosaic.rise', 'bed.least'],
    };
  },
});
