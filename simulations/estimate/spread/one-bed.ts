/**
 * One tile set once: the ridge law applied piece by piece over a tile that is not flat on a floor that is not flat. The
 * mortar stays where it was combed (a merged bed hardly flows, and a hand moves only its rim), so each piece has its own
 * gap and its own coverage; the tile sinks as a whole until what the pieces carry is what is applied.
 */
import { pressureAt } from '../../bed/ridge-law.ts';
import { slideLoad } from '../../bed/slide-law.ts';
import { rootOfRising } from '../../numbers/find-root.ts';

export interface OneBed {
  /** Mean bed that the comb leaves, mm. */
  bedMm: number;
  /** Coat on the back, less what the back's relief takes, mm; below zero where relief takes more than the coat gives. */
  coatMm: number;
  /** Height of the fresh ridges, mm. */
  crestMm: number;
  pitchMm: number;
  /** V ridges begin as a line, square ones as wide as the notch. */
  pointed: boolean;
  /** Middle of the gap over its ends, along and across the tile, mm: bow of tile and dip of floor together. */
  bowMm: readonly [along: number, across: number];
  yieldPa: number;
  /** Mean pressure on the tile, Pa: hand and weight. */
  pressurePa: number;
  /** All strokes together, mm of slide across the ridges. */
  slideMm: number;
  /** μU/(hτ) of the strokes. */
  speed: number;
  /** Share of contact made by pressing alone that transfers: skin. */
  transfer: number;
}

const ALONG = 5;
const ACROSS = 3;
/** Model: an overfull place must push mortar through a merged bed; it stiffens so many times its excess. */
const OVERFULL = 15;
/** Nothing is thinner than the sand lets it be, mm. */
const GRAIN_STOP = 0.5;
const STROKE_STEPS = 8;

/** Height of the gap over its lowest place at the middle of each piece of a quarter of the tile, for a unit bow. */
const shape = (n: number, count: number): number => 1 - ((n + 0.5) / count) ** 2;

/** Gap over the tightest place of each piece, mm. */
function warpOf([along, across]: OneBed['bowMm']): number[] {
  const gaps: number[] = [];
  for (let i = 0; i < ALONG; i += 1)
    for (let j = 0; j < ACROSS; j += 1) gaps.push(along * shape(i, ALONG) + across * shape(j, ACROSS));
  const least = Math.min(...gaps);
  return gaps.map((gap) => gap - least);
}

/** Coverage of a piece at a gap; over one where there is more mortar than gap. */
export function fillAt(bed: Pick<OneBed, 'bedMm' | 'coatMm' | 'crestMm' | 'pointed'>, gapMm: number): number {
  const room = Math.max(GRAIN_STOP / 2, gapMm - bed.coatMm);
  if (room >= bed.crestMm) return 0;
  const fill = bed.bedMm / room;
  // A V ridge cut off at a gap is a trapezium on a base as wide as the pitch: its top is 2A/g less that base.
  return bed.pointed && fill < 1 ? 2 * fill - 1 : fill;
}

const carried = (bed: OneBed, fill: number, rate: number | null, loads: LoadTable): number => {
  if (fill <= 0) return 0;
  const full = Math.min(1, fill);
  const ridges = { pitchMm: bed.pitchMm, meanMm: bed.bedMm, touchShare: 0 };
  // Relief that no coat has filled narrows no gap: the ridges must come down all the same.
  const still = bed.yieldPa * pressureAt(full, ridges, Math.max(0, bed.coatMm));
  if (fill >= 1) return still * (1 + OVERFULL * (fill - 1));
  return rate === null ? still : still * loads(rate);
};

type LoadTable = (rate: number) => number;
const TABLE = 40;
const MOST_RATE = 5;

/** Load ratio by widening rate for one speed, looked up by straight lines: the spread asks for it a million times. */
function loadTable(speed: number): LoadTable {
  const values = Array.from({ length: TABLE + 1 }, (_, n) => slideLoad((n * MOST_RATE) / TABLE, 1, speed));
  return (rate) => {
    if (rate >= MOST_RATE) return 1;
    const place = (rate / MOST_RATE) * TABLE;
    const n = Math.floor(place);
    const from = values[n] ?? 0;
    return from + (place - n) * ((values[n + 1] ?? 1) - from);
  };
}

/** Coverage of one tile set once, 0…1. */
export function coverageOfOne(bed: OneBed): number {
  const warp = warpOf(bed.bowMm);
  const loads = loadTable(bed.speed);
  const count = warp.length;
  const fills = (height: number): number[] => warp.map((gap) => fillAt(bed, height + gap));
  const pressure = (height: number): number =>
    fills(height).reduce((sum, fill) => sum + carried(bed, fill, null, loads), 0) / count;
  // Press: the tile comes down until the bed carries what is applied.
  const top = Math.max(GRAIN_STOP, bed.crestMm + bed.coatMm);
  const sunk = rootOfRising((down) => pressure(top - down) - bed.pressurePa, 0, top - GRAIN_STOP, 26);
  let height = top - sunk;
  const pressed = mean(fills(height).map((fill) => Math.min(1, Math.max(0, fill))));
  // Slide: each stroke widens every ridge; the tile sinks at the rate at which the pieces still carry it.
  const step = bed.slideMm / STROKE_STEPS;
  for (let n = 0; n < STROKE_STEPS && step > 0; n += 1) {
    // Judged where the stroke ends, so that a long step can't carry the tile past the place where it locks.
    const balance = (sink: number): number => {
      const end = height - step * sink;
      let sum = 0;
      for (const gap of warp) {
        const fill = fillAt(bed, end + gap);
        sum += carried(bed, fill, (sink * fill * bed.pitchMm) / (end + gap), loads);
      }
      return sum / count - bed.pressurePa;
    };
    const most = Math.max(0, height - GRAIN_STOP) / step;
    height -= step * Math.min(most, rootOfRising(balance, 0, Math.min(most, MOST_RATE), 22));
  }
  const set = mean(fills(height).map((fill) => Math.min(1, Math.max(0, fill))));
  // Sliding brings fresh mortar up, so only what pressing alone has made suffers from the skin.
  const fresh = bed.slideMm > 0 ? Math.max(0, set - pressed) / Math.max(set, 1e-9) : 0;
  const slid = Math.min(1, bed.slideMm / bed.pitchMm);
  return set * (Math.max(fresh, slid) + (1 - Math.max(fresh, slid)) * bed.transfer);
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
