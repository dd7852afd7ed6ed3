import { type BedAir, burstPockets, findVoids, makeAir, pressAir } from './air.ts';
import { classify } from './classify.ts';
import { combBed, layTile } from './fill.ts';
import { type BedGrid, FRESH, OPEN, TOUCHED } from './grid.ts';
import { type Lean, leanOf } from './lean.ts';
import { spanOf } from './layout.ts';
import { type BedLoad, bedLoad } from './load.ts';
import { march, marchOn, type MarchTerms } from './march.ts';
import { route } from './route.ts';
import { GRAVITY } from '../numbers/physics.ts';
import type { BedSetup } from './types.ts';

/** End term of a squeezed ridge, in yield stresses (Hill's slip-line loads fit 3/2, from memory; see MODEL.md). */
export const END_TERM = 1.5;

/**
 * Where bursts take more than this share of the load from the air, the pressures are found again, for pockets behind
 * lean on those that burst; so often at the most.
 */
const BURST_SHARE = 0.003;
const MOST_BURSTS = 12;

/**
 * Mortar over the gap is passed on again while it is more than these shares of the room left and of the mortar in
 * contact; so often at the most.
 */
const OVER_ROOM_SHARE = 0.02;
const OVER_BED_SHARE = 0.006;
const MOST_PASSES = 8;

/** One bed being worked: the grid and what stands about it. */
export interface Bed {
  setup: BedSetup;
  grid: BedGrid;
  air: BedAir;
  terms: MarchTerms;
  load: BedLoad;
  /** Tile's mean plane over the mean floor at its centre, mm, and its slopes. */
  height: number;
  slopeX: number;
  slopeY: number;
  weightN: number;
  /** What the comb left on the floor, mean, mm. */
  combedMeanMm: number;
  /** Mortar at the start, the sum of columns, mm, and what has gone out past the tile since. */
  startSum: number;
  outSum: number;
  steps: number;
  /** Path slid so far, mm. */
  slidMm: number;
  /** True while contact is being made by sliding. */
  sliding: boolean;
  /** The lean that a slanted notch's ridges have in common; null with every other notch. */
  lean: Lean | null;
}

const sumOf = (values: Float64Array): number => {
  let sum = 0;
  for (const value of values) sum += value;
  return sum;
};

const nothing: BedLoad = {
  forceN: 0,
  airN: 0,
  atX: 0,
  atY: 0,
  contactMm2: 0,
  centreX: 0,
  centreY: 0,
  spreadX: 0,
  spreadY: 0,
  roomMm3: 0,
  overMm3: 0,
  tileMm2: 0,
  meanGap: 0,
  leastGap: 0,
};

/** Combs, lays the tile to its first touch and takes the first measure. */
export function startBed(setup: BedSetup, afterComb?: (grid: BedGrid) => void): Bed {
  const grid = combBed(setup);
  afterComb?.(grid);
  const combed = sumOf(grid.mortar);
  const height = layTile(grid, setup);
  const { yieldPa } = setup.mortar;
  const bed: Bed = {
    setup,
    grid,
    air: makeAir(),
    terms: { yieldPa, endPa: setup.physics.endTerm ? END_TERM * yieldPa : 0, gaugePa: new Float64Array(2) },
    load: nothing,
    height,
    slopeX: 0,
    slopeY: 0,
    weightN: 0,
    combedMeanMm: combed / grid.mortar.length,
    startSum: sumOf(grid.mortar),
    outSum: 0,
    steps: 0,
    slidMm: 0,
    sliding: false,
    lean: leanOf(setup),
  };
  measure(bed);
  bed.weightN = setup.physics.weight
    ? bed.load.tileMm2 * 1e-6 * setup.tile.thicknessMm * 1e-3 * setup.tile.densityKgM3 * GRAVITY
    : 0;
  return bed;
}

/**
 * Finds full cells, voids and their air, the pressure at yield, and the load the bed bears as it lies.
 * @param fallMm how far the tile has come down since the last time
 */
export function measure(bed: Bed, fallMm = 0): void {
  const { grid, terms } = bed;
  const touched = bed.sliding ? TOUCHED | FRESH : TOUCHED;
  const changed = classify(grid, touched);
  if (bed.setup.physics.air) {
    if (changed > 0) bed.air = findVoids(grid, bed.air, fallMm);
    else bed.air.fresh.fill(0);
    pressAir(grid, bed.air);
    terms.gaugePa = bed.air.gaugePa;
  }
  march(grid, terms);
  if (bed.setup.physics.air)
    for (
      let n = 0;
      burstPockets(grid, bed.air, terms.yieldPa) > BURST_SHARE * bed.load.forceN && n < MOST_BURSTS;
      n += 1
    )
      marchOn(grid, terms, bed.air.burst);
  bed.load = bedLoad(grid, terms);
}

/** Moves the tile down by `sink` at its centre and by the slopes; mortar stays where it is. */
export function lowerTile(bed: Bed, sink: number, slopeX: number, slopeY: number): void {
  const { gap, columns, rim, tileColumns, tileRows, cellMm, originMm } = bed.grid;
  for (let row = rim; row < rim + tileRows; row += 1) {
    const start = row * columns + rim;
    const fall = sink - slopeY * (originMm[1] + row * cellMm);
    let x = originMm[0] + rim * cellMm;
    for (let n = start; n < start + tileColumns; n += 1, x += cellMm) gap[n] = gap[n]! - fall + slopeX * x;
  }
  bed.height -= sink;
  bed.slopeX += slopeX;
  bed.slopeY += slopeY;
}

/** Lets the mortar find its new place and measures the bed as it then lies. */
function passOn(bed: Bed, fallMm = 0): void {
  // The last march's way downhill still serves; so the load is of the bed as it lies after the mortar has moved.
  bed.outSum += route(bed.grid, bed.terms);
  measure(bed, fallMm);
  bed.steps += 1;
}

const isOverfull = ({ overMm3, roomMm3, contactMm2, meanGap }: BedLoad): boolean =>
  overMm3 > OVER_ROOM_SHARE * roomMm3 && overMm3 > OVER_BED_SHARE * contactMm2 * meanGap;

/**
 * Moves the tile as `lowerTile` does, then passes the mortar on. A lane that closes within the step has no room for what
 * still runs into it: that goes on before the tile comes down further, or it would come down on room that is spoken for.
 */
export function sinkBy(bed: Bed, sink: number, slopeX: number, slopeY: number): void {
  lowerTile(bed, sink, slopeX, slopeY);
  passOn(bed, Math.max(0, sink));
  for (let n = 0; n < MOST_PASSES && isOverfull(bed.load); n += 1) passOn(bed);
}

/** Mortar that a full cell holds above its gap for want of a way out, the largest share of a gap. */
function backlog(grid: BedGrid): number {
  const { mortar, gap, state } = grid;
  const [first, past] = spanOf(grid);
  let most = 0;
  for (let n = first; n < past; n += 1) {
    if (state[n] === OPEN) continue;
    const over = mortar[n]! / gap[n]! - 1;
    if (over > most) most = over;
  }
  return most;
}

/**
 * The most the tile should fall in a step so that closing voids are not run past, mm.
 * @param share part of the fall that would fill them
 * @param least share of the gap below which a step needs not be
 */
export const closingStep = (bed: Bed, share: number, least: number): number =>
  Math.max((share * bed.load.roomMm3) / bed.load.contactMm2, least * bed.load.meanGap);

/** Passes on what front cells were handed beyond their room, without moving the tile. */
export function settle(bed: Bed): void {
  for (let n = 0; n < MOST_PASSES && backlog(bed.grid) > 1e-6; n += 1) passOn(bed);
}

/** |mortar now − mortar at the start| over the start. */
export function massError(bed: Bed): number {
  return bed.startSum === 0 ? 0 : Math.abs(sumOf(bed.grid.mortar) - bed.startSum) / Math.abs(bed.startSum);
}
