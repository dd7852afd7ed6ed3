import type { BedSetup } from '@sim/bed/types.ts';
import { readSetup } from '@sim/bed/read-setup.ts';
import type { Area, Job } from '@sim/estimate/job.ts';
import type { AreaPlan } from '@sim/estimate/plan-types.ts';
import { spreadQuestion } from '@sim/estimate/predict.ts';
import { pitchMm } from '@sim/trowel/notch.ts';

/** About as many cells as a phone works through in a few seconds. */
const CELLS = 150_000;
/** Cells to a ridge that show it well. */
const TO_A_PITCH = 10;

const middle = ([low, high]: readonly [number, number]): number => (low + high) / 2;

/** Cells as fine as the ridges want, but no more of them than a phone can take. */
export const cellFor = (lengthMm: number, widthMm: number, pitch: number): number =>
  Math.max(pitch / TO_A_PITCH, Math.sqrt((lengthMm * widthMm) / CELLS), Math.min(lengthMm, widthMm) / 400);

/** What the plan's way of setting does to the tile after the first press. */
function motion({ method, done: { travelMm }, comb }: AreaPlan, forceN: number): object[] {
  if (travelMm > 0)
    return [{ do: 'slide', forceN, strokeMm: travelMm, strokes: 2, directionDeg: comb.directionDeg - 90 }];
  if (method === 'slide') return [];
  return [method === 'beat-in' ? { do: 'tap', blows: 8 } : { do: 'vibrate', forceN, seconds: 5 }];
}

/**
 * One tile of an area set as the plan says, in the middle of everything the spread draws over: a tile with half the bow
 * it may have, a floor with half its dip, the usual push.
 * @returns a complete set-up for the bed solver, or null where the solver takes no such tile
 */
export function bedOfArea(area: Area, job: Job, plan: AreaPlan): BedSetup | null {
  const question = spreadQuestion(area, job, {
    notch: plan.notch,
    angleDeg: plan.comb.angleDeg,
    flatten: plan.flattenRidges,
    method: plan.method,
    travelMm: plan.done.travelMm,
    butterHow: plan.done.butterHow,
    swirled: plan.done.swirled,
    light: plan.done.light,
    openMin: plan.openMin,
    minCoverage: plan.minCoverage,
  });
  const { lengthMm, widthMm } = question;
  const push = middle(question.pushN);
  const half = question.measured ? 1 : 0.5;
  const { shape, widthMm: notchWidth, depthMm, toothMm } = plan.notch;
  const reading = readSetup({
    tile: {
      lengthMm,
      widthMm,
      thicknessMm: area.tile.thicknessMm,
      densityKgM3: Math.min(4000, Math.max(500, (question.tileKgM2 / area.tile.thicknessMm) * 1000)),
      bowLengthMm: half * question.bowMm[0],
      bowWidthMm: half * question.bowMm[1],
      reliefMm: Math.min(5, area.tile.reliefMm),
    },
    floor: { bowLengthMm: -question.dipMm / 2 },
    trowel: { shape, widthMm: notchWidth, depthMm, toothMm, angleDeg: plan.comb.angleDeg },
    comb: {
      pattern: plan.done.swirled ? 'swirl' : 'straight',
      directionDeg: plan.comb.directionDeg,
      flattened: plan.flattenRidges,
    },
    mortar: { yieldPa: question.yieldPa },
    butterMm: Math.min(10, middle(question.coatMm)),
    actions: [{ do: 'press', forceN: push, atX: 0, atY: 0 }, ...motion(plan, push)],
    cellMm: cellFor(lengthMm, widthMm, pitchMm(plan.notch)),
  });
  return reading.ok ? reading.value.setup : null;
}
