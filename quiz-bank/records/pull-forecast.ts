import { defaultActions, defaultSetup } from '../../simulations/bed/defaults.ts';
import { ridgeEstimate } from '../../simulations/bed/ridge-estimate.ts';
import type { BedAction, BedSetup } from '../../simulations/bed/types.ts';
import { tileKgM2 } from '../../simulations/estimate/tile-facts.ts';
import { valueOf } from '../../simulations/rules/rulebook.ts';
import { commonNotches, type CommonNotch } from '../../simulations/trowel/common-notches.ts';
import { meanBedMm } from '../../simulations/trowel/notch.ts';
import { testedYieldPa } from './plate-test.ts';
import { measuredCoverage, type PullRecord } from './pull-record.ts';

/** What the ridge law foretells for a pull, shares 0…1: a light hand with a low blade, a middling and a strong one. */
export interface PullForecast {
  low: number;
  middle: number;
  high: number;
}

const between = (least: number, most: number, share: number): number => least + (most - least) * share;

/** A hand from the lightest (0) to the strongest (1) of the rules, on this record's bed. */
function setupFor(record: PullRecord, notch: CommonNotch, yieldPa: number, hand: number): BedSetup {
  const start = defaultSetup();
  const { thicknessMm } = record;
  const lengthMm = Math.max(record.lengthMm, record.widthMm);
  const widthMm = Math.min(record.lengthMm, record.widthMm);
  const pressing = between(valueOf('model.pressing', 'least'), valueOf('model.pressing', 'most'), hand);
  const forceN = pressing * (record.surface === 'wall' ? valueOf('model.pressing', 'wall') : 1);
  const angleDeg = between(valueOf('trowel.angle', 'usual'), valueOf('trowel.angle', 'steep'), hand);
  const { shape, widthMm: wide, depthMm, toothMm } = notch;
  const trowel = { ...start.trowel, shape, widthMm: wide, depthMm, toothMm, angleDeg };
  const press: BedAction = { ...defaultActions.press, forceN };
  // The rule's travel, the notch's width there and back; the ridges run along the width, so across them is 0°.
  const slide = (directionDeg: number): BedAction => ({ ...defaultActions.slide, forceN, strokeMm: wide, strokes: 2, directionDeg }); // prettier-ignore
  return {
    ...start,
    tile: { ...start.tile, lengthMm, widthMm, thicknessMm, densityKgM3: (tileKgM2(record) / thicknessMm) * 1000 },
    trowel,
    mortar: { ...start.mortar, yieldPa },
    butterMm: record.buttered ? meanBedMm(trowel) * valueOf('butter.extra', 'least') : 0,
    actions: record.setBy === 'pressed' ? [press] : [press, slide(record.setBy === 'across' ? 0 : 90)],
  };
}

/** Forecasts made before, by record: a class's table is drawn again at every change. */
const made = new WeakMap<PullRecord, PullForecast | null>();

function make(record: PullRecord): PullForecast | null {
  const notch = commonNotches.find(({ id }) => id === record.notch);
  const yieldPa = record.plates && testedYieldPa(record.plates);
  if (!notch || yieldPa === null || record.setBy === null || record.material === 'mosaic') return null;
  const by = (hand: number): number => ridgeEstimate(setupFor(record, notch, yieldPa, hand)).coverage;
  return { low: by(0), middle: by(0.5), high: by(1) };
}

/**
 * Coverage of a pull by the ridge law on straight ridges along the short way, with the mortar as its two-plate test
 * measured it, a flat tile on a flat floor. Null where the notch, the way of setting or the mortar is not told, and for
 * mosaics, which have no standing ridges.
 */
export function forecastOf(record: PullRecord): PullForecast | null {
  const known = made.get(record);
  if (known !== undefined) return known;
  const forecast = make(record);
  made.set(record, forecast);
  return forecast;
}

/** How far a class's numbers lay from what was pulled: how many, the mean difference and its spread, all in shares. */
export interface Misses {
  count: number;
  bias: number | null;
  spread: number | null;
}

function missesOf(off: readonly number[]): Misses {
  if (off.length === 0) return { count: 0, bias: null, spread: null };
  const bias = off.reduce((sum, one) => sum + one, 0) / off.length;
  const spread =
    off.length < 2 ? null : Math.sqrt(off.reduce((sum, one) => sum + (one - bias) ** 2, 0) / (off.length - 1));
  return { count: off.length, bias, spread };
}

/** What the learners expected, against what was pulled. */
export const predictionsOf = (records: readonly PullRecord[]): Misses =>
  missesOf(records.flatMap((one) => (one.predicted === null ? [] : [one.predicted - measuredCoverage(one)])));

/** What the ridge law foretold, against what was pulled. */
export const forecastsOf = (records: readonly PullRecord[]): Misses =>
  missesOf(
    records.flatMap((one) => {
      const forecast = forecastOf(one);
      return forecast === null ? [] : [forecast.middle - measuredCoverage(one)];
    }),
  );
