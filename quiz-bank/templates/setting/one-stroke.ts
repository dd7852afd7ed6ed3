import { coverageAfterSlide } from '../../../simulations/bed/ridge-law.ts';
import type { TrowelSetup } from '../../../simulations/bed/types.ts';
import { GRAVITY } from '../../../simulations/numbers/physics.ts';
import { valueOf } from '../../../simulations/rules/rulebook.ts';
import { meanBedMm, pitchMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { atAngle, narrow, squares } from '../../jobs/trowels.ts';
import { alongAsGood } from '../../wrong-ideas/along-as-good.ts';
import { pressingIsEnough } from '../../wrong-ideas/pressing-is-enough.ts';

const mean = (low: number, high: number): number => (low + high) / 2;

/** What one stroke under a tile's own weight adds to the coverage it rests at, by the ridge law. */
function gains(trowel: TrowelSetup, strokeMm: number): { across: number; along: number; bare: number } {
  const yieldPa = valueOf('mortar.stiffness', 'holds');
  const touchShare = trowel.widthMm / pitchMm(trowel);
  const speed = mean(valueOf('model.strokes', 'slow'), valueOf('model.strokes', 'fast'));
  const viscosity = mean(valueOf('model.mix', 'least'), valueOf('model.mix', 'most'));
  const gain = (across: number): number =>
    coverageAfterSlide(
      touchShare,
      (valueOf('tile.weights', 'porcelain10') * GRAVITY) / yieldPa,
      { pathMm: strokeMm, across, viscousMm: (viscosity * speed) / yieldPa },
      { pitchMm: pitchMm(trowel), meanMm: meanBedMm(trowel), touchShare },
    ) - touchShare;
  return { across: gain(1), along: gain(0), bare: 1 - touchShare };
}

/** What one light stroke adds, across the ridges or along them. */
export const oneStroke = template({
  id: 'setting/one-stroke',
  outcomes: ['press-and-move', 'across-the-ridges'],
  ideas: ['pressing-is-enough', 'along-as-good'],
  draw: (draw) => {
    const trowel = atAngle(draw.stock([...squares.slice(2), ...narrow]), draw.pick([45, 60]));
    const strokeMm = draw.size([1 / 8, 3 / 16, 1 / 4]);
    const { across, along, bare } = gains(trowel, strokeMm);
    // Four points from choice to choice: fewer could be told by nobody.
    const choices = [pressingIsEnough.gainFromMoving(), along, across, bare];
    const clear = choices.every((gain, at) => at === 0 || gain - (choices[at - 1] ?? 0) >= 0.04);
    // A stroke as long as a valley is wide is said to fill it; that is another question.
    return clear && strokeMm <= 0.7 * bare * pitchMm(trowel)
      ? { trowel, strokeMm, across, along, bare, isAcross: draw.chance(0.5) }
      : null;
  },
  pose: ({ trowel, strokeMm, across, along, bare, isAcross }, say) => {
    const points = (gain: number): string => say.t('points', { points: Math.round(gain * 100) });
    const values = { stroke: say.length(strokeMm), across: points(across), along: points(along) };
    return {
      story: [
        say.t('story', { notch: say.notch(trowel), angle: trowel.angleDeg }),
        say.t(isAcross ? 'moved-across' : 'moved-along', values),
      ],
      facts: [
        [say.t('pitch'), say.length(pitchMm(trowel))],
        [say.t('rests'), say.share(1 - bare)],
      ],
      ask: say.t('ask'),
      answer: {
        kind: 'one',
        right: points(isAcross ? across : along),
        wrong: [
          { text: points(isAcross ? along : across), idea: isAcross ? null : alongAsGood.id },
          { text: say.t('nothing'), idea: pressingIsEnough.id },
          { text: say.t('all', { points: points(bare) }), idea: null },
        ],
      },
      why: [say.t(isAcross ? 'why-across' : 'why-along', values), say.t('why-model')],
      rules: ['set.across', 'set.travel', 'model.strokes'],
    };
  },
});
