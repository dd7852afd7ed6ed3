import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

import { leanShare } from '../../bed/lean.ts';
import { pitchMm, ridgeHeightMm } from '../../trowel/notch.ts';
import { valueOf } from '../../rules/rulebook.ts';
import { bedAt } from '../notches.ts';
import type { NamedNotch, Predicted, SettingMethod } from '../plan-types.ts';
import { coverageOfOne } from './one-bed.ts';
import { swirledCoverage } from './swirl.ts';

/** What the spread is drawn over. Lengths mm. */
export interface SpreadQuestion {
  notch: NamedNotch;
  lengthMm: number;
  widthMm: number;
  tileKgM2: number;
  reliefMm: number;
  /** Greatest bow along length and width; `measured` when it is this tile's own. */
  bowMm: readonly [number, number];
  measured: boolean;
  /** Greatest dip of the floor under one tile. */
  dipMm: number;
  yieldPa: number;
  angleDeg: number;
  method: SettingMethod;
  travelMm: number;
  wall: boolean;
  flatten: boolean;
  /** Combed in swirls instead of straight lines. */
  swirled: boolean;
  /** Push of the hand on a floor, N: the least and the most. */
  pushN: readonly [number, number];
  /** Bed of a back coat: the least and the most. */
  coatMm: readonly [number, number];
  openMin: number;
  minCoverage: number;
}

export interface SpreadOptions {
  seed: number;
  draws: number;
  /** Called between draws with the share done; return true to stop. */
  onProgress?: (share: number) => boolean;
}

/** Thrown when a caller stops the spread. */
export class SpreadStopped extends Error {}

const GRAVITY = 9.81;
/** Ridges dragged level with the flat side stand so many times their mean (model). */
const FLATTENED = 1.15;
/** Skin halves transfer in about this many open times (model: exp(−(t/t₀)²) with t₀ of 30 min at 20 min open). */
const SKIN_OPEN_TIMES = 1.5;

/** One draw of a bed. @param chance a stream of numbers in [0, 1) */
function drawOne(question: SpreadQuestion, chance: () => number): number {
  const between = (low: number, high: number): number => low + (high - low) * chance();
  /** From −1 to 1, the middle likelier. */
  const either = (): number => chance() + chance() - 1;
  const { notch, method } = question;
  const angle = between(
    valueOf('trowel.angle', 'usual'),
    Math.max(question.angleDeg, valueOf('trowel.angle', 'steep')),
  );
  const coat = between(...question.coatMm);
  const bed = bedAt(notch, angle);
  // A knocked-down comb keeps a little of its relief.
  const crest = question.flatten ? bed * FLATTENED : ridgeHeightMm({ ...notch, angleDeg: angle, wearMm: 0 });
  const yieldPa = question.yieldPa * valueOf('model.mix', 'factor') ** (2 * chance() - 1);
  const bow = question.bowMm.map((most) => (question.measured ? most * between(0.8, 1.2) : most * either()));
  const dip = question.dipMm * either();
  const push = between(...question.pushN) * (question.wall ? valueOf('model.pressing', 'wall') : 1);
  const areaM2 = (question.lengthMm * question.widthMm) / 1e6;
  const pressedM2 = method === 'beat-in' ? valueOf('model.pressing', 'block') / 1e6 : areaM2;
  const slideMm =
    method === 'slide'
      ? question.travelMm * between(valueOf('model.strokes', 'least'), valueOf('model.strokes', 'most'))
      : method === 'collapse'
        ? valueOf('model.strokes', 'shaken') * between(0, 1)
        : method === 'beat-in'
          ? 0
          : valueOf('model.strokes', 'shaken') * between(0.5, 1.25);
  const age = between(0, question.openMin / 2) / (SKIN_OPEN_TIMES * question.openMin);
  const straight = coverageOfOne({
    bedMm: bed,
    coatMm: coat - question.reliefMm,
    crestMm: crest,
    pitchMm: pitchMm(notch),
    pointed: notch.shape === 'v' && !question.flatten,
    // Ridges of a swirl lean every way; knocked down, none.
    lean: question.flatten || question.swirled ? 0 : leanShare({ ...notch, angleDeg: angle, wearMm: 0 }),
    bowMm: [(bow[0] ?? 0) + dip, (bow[1] ?? 0) + (dip * question.widthMm) / question.lengthMm],
    yieldPa,
    pressurePa: push / pressedM2 + question.tileKgM2 * GRAVITY * (question.wall ? 0 : 1),
    slideMm,
    speed:
      (between(valueOf('model.mix', 'least'), valueOf('model.mix', 'most')) *
        between(valueOf('model.strokes', 'slow'), valueOf('model.strokes', 'fast'))) /
      (bed * yieldPa),
    transfer: Math.exp(-age * age),
  });
  // Ridges dragged flat are no ridges any more, however they were combed.
  if (!question.swirled || question.flatten) return straight;
  const { lengthMm, widthMm } = question;
  return swirledCoverage(straight, { lengthMm, widthMm, pitchMm: pitchMm(notch), slideMm });
}

/** Coverage as a spread over blade, mix, warp, floor and hand, for one way of combing; the same question and seed give the same spread. */
export function predictSpread(question: SpreadQuestion, { seed, draws, onProgress }: SpreadOptions): Predicted {
  const stream = xoroshiro128plus(seed);
  const chance = (): number => uniformFloat64(stream);
  const found: number[] = [];
  for (let n = 0; n < draws; n += 1) {
    if (onProgress?.(n / draws)) throw new SpreadStopped();
    found.push(drawOne(question, chance));
  }
  const sorted = found.toSorted((a, b) => a - b);
  const tail = valueOf('model.draws', 'tail');
  const at = (share: number): number => sorted[Math.min(draws - 1, Math.floor(share * draws))] ?? 0;
  return {
    median: at(0.5),
    low: at(tail),
    high: at(1 - tail),
    chanceOfPass: sorted.filter((one) => one >= question.minCoverage).length / draws,
    draws,
    sorted,
  };
}
