import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { meanBedMm, ridgeHeightMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { atAngle, narrow, squares, vees } from '../../jobs/trowels.ts';
import { depthIsTheBed } from '../../wrong-ideas/depth-is-the-bed.ts';
import { vLikeSquare } from '../../wrong-ideas/v-like-square.ts';

/** Does this notch at this angle leave the least bed a standard asks for? */
export const angleAndLeastBed = template({
  id: 'reading-a-notch/angle-and-least-bed',
  outcomes: ['angle-and-wear', 'bed-thickness-limits'],
  ideas: ['depth-is-the-bed', 'v-like-square'],
  draw: (draw) => {
    const trowel = atAngle(
      draw.stock([...squares.slice(1, 4), ...narrow, ...vees]),
      draw.pick([30, 40, 45, 50, 60, 70, 75, 90]),
    );
    const least = valueOf('bed.least', 'bed');
    // Not so near the limit that a hair of wear would turn the verdict.
    const enough = meanBedMm(trowel) >= least;
    return Math.abs(meanBedMm(trowel) / least - 1) < 0.05 || !draw.chance(enough ? 0.6 : 1) ? null : { trowel, least };
  },
  pose: ({ trowel, least }, say) => {
    const bed = meanBedMm(trowel);
    const passes = bed >= least;
    const isV = trowel.shape === 'v';
    const squareBed = meanBedMm(vLikeSquare.squares(trowel));
    return {
      story: [say.t('story', { notch: say.notch(trowel), angle: trowel.angleDeg })],
      facts: [[say.t('tooth'), trowel.toothMm === 0 ? say.t('tooth-none') : say.length(trowel.toothMm)]],
      ask: say.t('ask', { least: say.marked(least) }),
      picture: {
        kind: 'ridges',
        trowel,
        bedMm: null,
        words: say.t('picture', {
          notch: say.notch(trowel),
          angle: trowel.angleDeg,
          height: say.gap(ridgeHeightMm(trowel)),
        }),
      },
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: passes ? null : depthIsTheBed.id,
        right: say.t(passes ? 'over' : 'under'),
        wrong: [
          { text: say.t(passes ? 'under' : 'over'), idea: null },
          { text: say.t(depthIsTheBed.bedMm(trowel) >= least ? 'deep' : 'shallow'), idea: depthIsTheBed.id },
          isV
            ? { text: say.t(squareBed >= least ? 'square' : 'square-less'), idea: vLikeSquare.id }
            : { text: say.t(ridgeHeightMm(trowel) >= least ? 'high' : 'low'), idea: depthIsTheBed.id },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [say.t('why', { bed: say.gap(bed), least: say.gap(least) })],
      rules: ['bed.least', 'trowel.angle'],
      whyPicture: { kind: 'ridges', trowel, bedMm: bed, words: say.t('picture-why', { bed: say.gap(bed) }) },
    };
  },
});
