import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { meanBedMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { atAngle, vee, vees } from '../../jobs/trowels.ts';
import { eightyAnywhere } from '../../wrong-ideas/eighty-anywhere.ts';
import { vLikeSquare } from '../../wrong-ideas/v-like-square.ts';

/** A V notch under mosaic: is there a bed even if the ridges went down wholly? */
export const veeUnderASheet = template({
  id: 'small-tile-and-mosaics/vee-under-a-sheet',
  outcomes: ['flatten-ridges', 'mortar-a-notch-leaves'],
  ideas: ['v-like-square', 'eighty-anywhere'],
  draw: (draw) => {
    const trowel = atAngle(
      draw.stock([...vees, vee(5 / 32, 5 / 32), vee(1 / 2, 3 / 8), vee(5 / 16, 1 / 4)]),
      draw.pick([45, 50, 60, 70, 80, 90]),
    );
    const bedMm = meanBedMm(trowel);
    const squareMm = meanBedMm(vLikeSquare.squares(trowel));
    const least = valueOf('bed.least', 'bed');
    return Math.abs(bedMm / least - 1) < 0.05 ||
      Math.abs(squareMm / bedMm - 1) < 0.03 ||
      !draw.chance(bedMm >= least ? 0.65 : 1)
      ? null
      : { trowel, bedMm, squareMm, least };
  },
  pose: ({ trowel, bedMm, squareMm, least }, say) => {
    const passes = bedMm >= least;
    return {
      story: [say.t('story', { notch: say.notch(trowel), angle: trowel.angleDeg })],
      ask: say.t('ask', { least: say.marked(least) }),
      picture: { kind: 'trowel', trowel, words: say.t('picture', { notch: say.notch(trowel) }) },
      answer: {
        kind: 'judge',
        passes,
        verdictIdea: passes ? null : vLikeSquare.id,
        right: say.t(passes ? 'over' : 'under'),
        wrong: [
          { text: say.t(passes ? 'under' : 'over'), idea: null },
          { text: say.t(squareMm >= least ? 'square' : 'square-less'), idea: vLikeSquare.id },
          { text: say.t('eighty', { share: say.share(eightyAnywhere.required()) }), idea: eightyAnywhere.id },
        ],
        verdicts: { yes: say.t('yes'), no: say.t('no') },
      },
      why: [
        say.t('why', { bed: say.gap(bedMm), least: say.gap(least) }),
        say.t('why-tips', {
          low: say.share(valueOf('mosaic.tip-touch', 'low')),
          high: say.share(valueOf('mosaic.tip-touch', 'high')),
        }),
      ],
      rules: ['bed.least', 'mosaic.tip-touch', 'mosaic.flatten'],
      whyPicture: { kind: 'ridges', trowel, bedMm, words: say.t('picture-why', { bed: say.gap(bedMm) }) },
    };
  },
});
