import { MM_PER_INCH } from '../../../simulations/units/length.ts';
import { meanBedMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { apart } from '../../jobs/apart.ts';
import { atAngle, narrow, uneven, vees } from '../../jobs/trowels.ts';
import { bagYieldIsMine } from '../../wrong-ideas/bag-yield-is-mine.ts';
import { depthIsTheBed } from '../../wrong-ideas/depth-is-the-bed.ts';
import { vLikeSquare } from '../../wrong-ideas/v-like-square.ts';
import { widthForDepth } from '../../wrong-ideas/width-for-depth.ts';

/** Mortar a bag makes (an invented bag, between the densities and waters of the rules), L. */
const BAG_LITRES = 18;
/** A layer of one unit of the reader's own: a sixteenth of an inch, or a millimetre. */
const STEPS = { imperial: MM_PER_INCH / 16, metric: 1 } as const;

/** Mortar that lies combed on a floor, by the notch and not by its label or the bag's. */
export const litresOnTheFloor = template({
  id: 'how-much-to-buy/litres-on-the-floor',
  outcomes: ['bags-from-bed', 'mortar-a-notch-leaves', 'headline-rate'],
  ideas: ['depth-is-the-bed', 'width-for-depth', 'v-like-square', 'bag-yield-is-mine'],
  draw: (draw) => {
    const trowel = atAngle(
      draw.stock([...narrow, ...uneven.slice(3), ...vees.slice(0, 2), ...vees.slice(3)]),
      draw.pick([45, 60]),
    );
    const areaM2 = draw.floor(draw.pick([5, 8, 10, 12, 15, 20]));
    const bedMm = meanBedMm(trowel);
    // The label's floor is larger than this one by a third to two thirds.
    const headline = (BAG_LITRES / bedMm) * draw.step(1.35, 1.7, 0.05);
    // Read as a square or the wrong way round, a V comes to the same; so each shape offers one of the two.
    const misread = trowel.shape === 'v' ? vLikeSquare.squares(trowel) : widthForDepth.swaps(trowel);
    const sizes = [bedMm, depthIsTheBed.bedMm(trowel), meanBedMm(misread), BAG_LITRES / bagYieldIsMine.rate(headline)];
    return apart(sizes, 0.12) ? { trowel, areaM2, bedMm, headline, sizes } : null;
  },
  pose: ({ trowel, areaM2, bedMm, headline, sizes }, say) => {
    const litres = (mm: number): string => say.number(mm * areaM2, 'volume', 0);
    const [right = bedMm, depth = 0, misread = 0, label = 0] = sizes;
    const step = STEPS[say.units];
    return {
      story: [say.t('story', { area: say.area(areaM2), notch: say.notch(trowel), angle: trowel.angleDeg })],
      facts: [
        [say.t('width'), say.length(trowel.widthMm)],
        [say.t('depth'), say.length(trowel.depthMm)],
        [say.t('tooth'), trowel.toothMm === 0 ? say.t('tooth-none') : say.length(trowel.toothMm)],
        [say.t('height'), say.share(bedMm / meanBedMm(atAngle(trowel, 90)))],
        [say.t('layer', { step: say.length(step) }), litres(step)],
        [say.t('headline'), say.number(headline, 'rate', say.units === 'imperial' ? 0 : 1)],
        [say.t('bag'), say.number(BAG_LITRES, 'volume', 0)],
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: litres(right),
        wrong: [
          { text: litres(depth), idea: depthIsTheBed.id },
          { text: litres(misread), idea: trowel.shape === 'v' ? vLikeSquare.id : widthForDepth.id },
          { text: litres(label), idea: bagYieldIsMine.id },
        ],
      },
      why: [say.t('why', { bed: say.gap(bedMm), value: litres(right) }), say.t('why-label', { label: litres(label) })],
      rules: ['trowel.naming', 'trowel.angle', 'bags.spread'],
    };
  },
});
