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
    const trowel = atAngle(draw.pick([...squares.slice(1, 4), ...narrow, ...vees]), draw.pick([30, 45, 60, 75, 90]));
    const least = valueOf('bed.least', 'bed');
    // Not so near the limit that a hair of wear would turn the verdict.
    return Math.abs(meanBedMm(trowel) / least - 1) < 0.05 ? null : { trowel, least };
  },
  pose: ({ trowel, least }, say) => {
    const bed = meanBedMm(trowel);
    const passes = bed >= least;
    const reason = (value: number, name: string) =>
      say.t(value >= least ? `${name}-over` : `${name}-under`, { bed: say.gap(value), least: say.gap(least) });
    const other = trowel.shape === 'v' ? meanBedMm(vLikeSquare.squares(trowel)) : ridgeHeightMm(trowel);
    return {
      story: [say.t('story', { notch: say.notch(trowel), angle: trowel.angleDeg })],
      facts: [[say.t('tooth'), trowel.toothMm === 0 ? say.t('tooth-none') : say.length(trowel.toothMm)]],
      ask: say.t('ask', { least: say.gap(least) }),
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
        right: reason(bed, 'reason'),
        wrong: [
          { text: reason(depthIsTheBed.bedMm(trowel), 'reason'), idea: depthIsTheBed.id },
          { text: reason(other, 'reason'), idea: trowel.shape === 'v' ? vLikeSquare.id : depthIsTheBed.id },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [say.t('why', { bed: say.gap(bed), least: say.gap(least) })],
      rules: ['bed.least', 'trowel.angle'],
      whyPicture: { kind: 'ridges', trowel, bedMm: bed, words: say.t('picture-why', { bed: say.gap(bed) }) },
    };
  },
});
