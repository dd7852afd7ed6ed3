/**
 * One tile set once: the ridge law applied piece by piece over a tile that is not flat on a floor that is not flat. The
 * mortar stays where it was combed (a merged bed hardly flows, and a hand moves only its rim), so each piece has its own
 * gap and its own coverage; the tile sinks as a whole until what the pieces carry is what is applied.
 */
import { pressedAt, pressureAt } from '../../bed/ridge-law.ts';
import { rootOfRising } from '../../numbers/find-root.ts';
import { lookedUp, lookup, type Lookup, MOST_RATE, slideLoads } from './lookup.ts';

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
  /** Lean over width of ridges that all lean one way, 0…1; upright ones if left out. */
  lean?: number;
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

const ALONG = 4;
const ACROSS = 3;
/** Model: an overfull place must push mortar through a merged bed; it stiffens so many times its excess. */
const OVERFULL = 8;
/** Nothing is thinner than the sand lets it be, mm. */
const GRAIN_STOP = 0.5;
/** Share of a ribbed back that is groove (model; contact only on the raised grid is reported by the trade press). */
const GROOVES = 0.5;
const STROKE_STEPS = 6;
const PRESS_HALVINGS = 18;
const SLIDE_HALVINGS = 14;
const SHARES = 24;

/** Height of the gap over its lowest place at the middle of each piece of a quarter of the tile, for a unit bow. */
const shape = (n: number, count: number): number => 1 - ((n + 0.5) / count) ** 2;

/** Gap over the tightest place of each piece, mm. */
function warpOf([along, across]: OneBed['bowMm']): Float64Array {
  const gaps = new Float64Array(ALONG * ACROSS);
  for (let i = 0; i < ALONG; i += 1)
    for (let j = 0; j < ACROSS; j += 1) gaps[i * ACROSS + j] = along * shape(i, ALONG) + across * shape(j, ACROSS);
  const least = gaps.reduce((low, gap) => Math.min(low, gap), Infinity);
  return gaps.map((gap) => gap - least);
}

/** Coverage of a piece at a gap; over one where there is more mortar than gap. */
function fillAt(bed: Pick<OneBed, 'bedMm' | 'coatMm' | 'crestMm' | 'pointed'>, gapMm: number): number {
  const room = Math.max(GRAIN_STOP / 2, gapMm - bed.coatMm);
  if (room >= bed.crestMm) return 0;
  const fill = bed.bedMm / room;
  // A V ridge cut off at a gap is a trapezium on a base as wide as the pitch: its top is 2A/g less that base.
  return bed.pointed && fill < 1 ? 2 * fill - 1 : fill;
}

/** What a piece carries, Pa; `rate` is how fast its ridges widen with the slide, null when nothing slides. */
function carried(stands: Lookup, loads: Lookup, fill: number, rate: number | null): number {
  if (fill <= 0) return 0;
  if (fill >= 1) return lookedUp(stands, 1, 1) * (1 + OVERFULL * (fill - 1));
  const still = lookedUp(stands, 1, fill);
  return rate === null ? still : still * (rate >= MOST_RATE ? 1 : lookedUp(loads, MOST_RATE, rate));
}

/** Mean coverage at a height, 0…1. */
function meanFill(bed: OneBed, warp: Float64Array, heightMm: number): number {
  let sum = 0;
  for (const gap of warp) sum += Math.min(1, Math.max(0, fillAt(bed, heightMm + gap)));
  return sum / warp.length;
}

/** Coverage of one tile set once, 0…1. */
export function coverageOfOne(bed: OneBed): number {
  const warp = warpOf(bed.bowMm);
  const loads = slideLoads(bed.speed);
  // Relief that no coat has filled swallows mortar: the ridges come down to what is left of the bed.
  const left = Math.max(GRAIN_STOP, bed.bedMm + Math.min(0, bed.coatMm));
  const ridges = { pitchMm: bed.pitchMm, meanMm: left, touchShare: 0, lean: bed.lean ?? 0 };
  const coat = Math.max(0, bed.coatMm);
  const stands = lookup((share) => bed.yieldPa * pressureAt(share, ridges, coat), 1, SHARES);
  const pressedTo = lookup((share) => bed.yieldPa * pressedAt(share, ridges, coat), 1, SHARES);
  /** What the bed carries at a height more than is applied; `sink` is how far the tile comes down a millimetre of slide. */
  const excess = (heightMm: number, sink: number | null): number => {
    let sum = 0;
    for (const gap of warp) {
      const fill = fillAt(bed, heightMm + gap);
      const rate = sink === null ? null : (sink * fill * bed.pitchMm) / (heightMm + gap);
      sum += carried(rate === null ? pressedTo : stands, loads, fill, rate);
    }
    return sum / warp.length - bed.pressurePa;
  };
  // Press: the tile comes down until the bed carries what is applied.
  const top = Math.max(GRAIN_STOP, bed.crestMm + bed.coatMm);
  let height = top - rootOfRising((down) => excess(top - down, null), 0, top - GRAIN_STOP, PRESS_HALVINGS);
  const pressed = meanFill(bed, warp, height);
  // Slide: each stroke widens every ridge; the tile sinks at the rate at which the pieces still carry it. That is
  // judged where the step ends, so that a long step can't carry the tile past the place where it locks.
  const step = bed.slideMm / STROKE_STEPS;
  for (let n = 0; n < STROKE_STEPS && step > 0; n += 1) {
    const from = height;
    const most = Math.min(MOST_RATE, Math.max(0, from - GRAIN_STOP) / step);
    height = from - step * rootOfRising((sink) => excess(from - step * sink, sink), 0, most, SLIDE_HALVINGS);
  }
  const set = meanFill(bed, warp, height);
  // Sliding brings fresh mortar up, so only what pressing alone has made suffers from the skin.
  const fresh = Math.max(set > 0 ? (set - pressed) / set : 0, Math.min(1, bed.slideMm / bed.pitchMm));
  // Grooves that no coat has filled keep air: mortar touches the ribs and reaches into the grooves as far as it lasts.
  const bare = GROOVES * Math.min(1, Math.max(0, -bed.coatMm) / bed.bedMm);
  return set * (1 - bare) * (fresh + (1 - fresh) * bed.transfer);
}
