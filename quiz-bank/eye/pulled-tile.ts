import { defaultSetup } from '../../simulations/bed/defaults.ts';
import { pressureAt } from '../../simulations/bed/ridge-law.ts';
import type { BedAction, BedSetup } from '../../simulations/bed/types.ts';
import { meanBedMm, pitchMm } from '../../simulations/trowel/notch.ts';
import { inches } from '../../simulations/units/length.ts';
import { type Draw, drawFrom } from '../engine/draw.ts';
import { atAngle, narrow, square, squares } from '../jobs/trowels.ts';

/** What makes a pull hard to judge: even stripes, voids here and there, bare corners and edges. */
export const EYE_LEVELS = ['texture', 'voids', 'corners'] as const;
export type EyeLevel = (typeof EYE_LEVELS)[number];

const sizes = [
  [6, 6],
  [8, 8],
  [8, 4],
  [10, 10],
  [12, 6],
] as const;

const blades = [...squares.slice(2), ...narrow.slice(0, 2)];
/** Wide teeth, little mortar. */
const spare = [square(1 / 4, 1 / 4, 1 / 2), square(3 / 16, 1 / 4, 5 / 16)];

/** How well the tile was worked in: only pressed, nudged once, or moved as it should be. */
const efforts = ['pressed', 'nudged', 'worked'] as const;

/** What is done to the tile after the press, at the press's own force. */
function working(effort: (typeof efforts)[number], forceN: number, draw: Draw): BedAction[] {
  if (effort === 'pressed') return [];
  const stroke = { do: 'slide' as const, forceN, directionDeg: 0, speedMmS: 20 };
  return effort === 'nudged'
    ? [{ ...stroke, strokeMm: draw.pick([1, 1.5, 2]), strokes: 1 }]
    : [{ ...stroke, strokeMm: draw.pick([3, 4, 5]), strokes: 2 }];
}

/**
 * The tile of a number at a level: the same number is the same tile on any machine. Push and work are drawn so that
 * each level has poor, middling and full backs; the coverage itself is what the bed solver makes of it.
 * @param number 0 upwards, as many as one likes
 */
export function eyeSetup(level: EyeLevel, number: number): BedSetup {
  const draw = drawFrom('eye', level, number);
  const base = defaultSetup();
  const [length, width] = draw.pick(sizes);
  const trowel = atAngle(draw.pick([...blades, ...spare, ...spare]), draw.pick([45, 60]));
  const tile = { ...base.tile, lengthMm: inches(length), widthMm: inches(width) };
  const yieldPa = draw.step(300, 700, 50);
  const touchShare = trowel.widthMm / pitchMm(trowel);
  const ridges = { pitchMm: pitchMm(trowel), meanMm: meanBedMm(trowel), touchShare };
  const aimed = level === 'texture' ? draw.step(0.35, 0.95, 0.02) : draw.step(0.3, 0.9, 0.05);
  const areaM2 = (tile.lengthMm * tile.widthMm) / 1e6;
  const forceN = Math.max(2, Math.round(pressureAt(aimed, ridges) * yieldPa * areaM2));
  const press = { do: 'press' as const, forceN, atX: 0, atY: 0 };
  const setup: BedSetup = {
    ...base,
    tile,
    trowel,
    comb: { ...base.comb, directionDeg: draw.pick([0, 90, 90, 75, 60]), seed: number },
    mortar: { ...base.mortar, yieldPa },
    actions: [press],
    // Nine cells to a pitch or two millimetres, whichever is finer.
    cellMm: Math.min(2, ridges.pitchMm / 9),
  };
  if (level === 'texture') return setup;
  const work = working(draw.pick(level === 'voids' ? [...efforts, 'pressed'] : efforts), forceN, draw);
  if (level === 'voids')
    return {
      ...setup,
      comb: { ...setup.comb, pattern: draw.pick(['swirl', 'crossed', 'fan', 'wobble'] as const) },
      tile: { ...tile, bowLengthMm: draw.step(0, 0.8, 0.2), twistMm: draw.pick([0, 0, 0.4]) },
      actions: [press, ...work],
    };
  return {
    ...setup,
    comb: { ...setup.comb, edgeBareMm: draw.pick([0, 0, 6, 12, 18]) },
    tile: { ...tile, bowLengthMm: -draw.step(0.2, 1, 0.2), bowWidthMm: -draw.step(0, 0.4, 0.2) },
    actions: [
      { ...press, atX: draw.step(-0.2, 0.2, 0.1) * tile.lengthMm, atY: draw.step(-0.2, 0.2, 0.1) * tile.widthMm },
      ...work,
    ],
  };
}
