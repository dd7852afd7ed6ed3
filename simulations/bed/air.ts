import { type BedGrid, EMPTY, FULL } from './grid.ts';
import { frontDistance } from './fronts.ts';
import { FIRST_POCKET, labelVoids } from './label-voids.ts';
import { spanOf } from './layout.ts';

/** Normal atmosphere, Pa (standard atmosphere). */
export const ATMOSPHERE_PA = 101_325;

/** Air this near to where it breaks out is there: which side rounding leaves it on must not matter, Pa. */
const LEVEL_PA = 0.01;

/** Air that can bear no more than this share of a load before it breaks out does not stop a tile. */
const LITTLE = 0.1;

/** A step is shortened, but to no less than this part at once, when lanes that closed in it could bear this share of the load. */
const LATE_SHARE = 0.05;
export const LEAST_PART = 0.25;

/** The air under the tile, by label. */
export interface BedAir {
  /** Labels in use. */
  count: number;
  /** Of them closed. */
  pockets: number;
  /** Amount of air as pressure × volume, Pa·mm (over one cell). */
  amount: Float64Array;
  /** Space left, mm (over one cell). */
  room: Float64Array;
  gaugePa: Float64Array;
  /** Pressure at which the air breaks out, Pa; known after the march. */
  boundPa: Float64Array;
  /** Space in each that was open to the tile's edge before the last step, mm (over one cell). */
  fresh: Float64Array;
  /** Cells of each, while there are pockets. */
  cells: Float64Array;
  /** 1 for each whose air broke out when last looked. */
  burst: Uint8Array;
  /** Times air broke out through mortar. */
  bursts: number;
}

export const makeAir = (): BedAir => ({
  count: FIRST_POCKET,
  pockets: 0,
  amount: new Float64Array(FIRST_POCKET),
  room: new Float64Array(FIRST_POCKET),
  gaugePa: new Float64Array(FIRST_POCKET),
  boundPa: new Float64Array(FIRST_POCKET),
  fresh: new Float64Array(FIRST_POCKET),
  cells: new Float64Array(FIRST_POCKET),
  burst: new Uint8Array(FIRST_POCKET),
  bursts: 0,
});

/** Space in the cells of each label now, mm; of those that are empty. */
function roomByLabel(grid: BedGrid, label: Uint16Array, room: Float64Array): Float64Array {
  const { state, gap, mortar } = grid;
  const [first, past] = spanOf(grid);
  for (let n = first; n < past; n += 1) {
    if (state[n] !== EMPTY) continue;
    const free = gap[n]! - mortar[n]!;
    if (free > 0) room[label[n]!] = room[label[n]!]! + free;
  }
  return room;
}

/** Hands each pocket the air that was in its place before; one that closed did so half way through the step, as far as is known. */
function handOn(
  grid: BedGrid,
  air: BedAir,
  before: Uint16Array,
  roomBefore: Float64Array,
  found: BedAir,
  fallMm: number,
): void {
  const { amount, fresh } = found;
  const { state, gap, mortar, label } = grid;
  const [first, past] = spanOf(grid);
  for (let n = first; n < past; n += 1) {
    if (state[n] !== EMPTY || label[n]! < FIRST_POCKET) continue;
    const old = before[n]!;
    const room = Math.max(0, gap[n]! - mortar[n]!);
    const wasOpen = old < FIRST_POCKET;
    const held = !wasOpen && roomBefore[old]! > 0 ? air.amount[old]! / roomBefore[old]! : ATMOSPHERE_PA;
    amount[label[n]!] = amount[label[n]!]! + held * (wasOpen ? room + 0.5 * fallMm : room);
    if (wasOpen) fresh[label[n]!] = fresh[label[n]!]! + room;
  }
}

/** How many cells each label has. */
function countCells(grid: BedGrid, cells: Float64Array): Float64Array {
  const { state, label } = grid;
  const [first, past] = spanOf(grid);
  for (let n = first; n < past; n += 1) if (state[n] === EMPTY) cells[label[n]!] = cells[label[n]!]! + 1;
  return cells;
}

/** Labels before the last search; only read while pockets are handed on. Grown when short. */
let labelsBefore = new Uint16Array(0);

/**
 * Finds the voids again and hands each the air that was in its place: the amount is kept however pockets close, part
 * or join; what was open brings air at the atmosphere's pressure.
 * @param fallMm how far the tile has come down since the last search
 */
export function findVoids(grid: BedGrid, air: BedAir, fallMm = 0): BedAir {
  const roomBefore = new Float64Array(air.count);
  // Without pockets before, all air is at the atmosphere's pressure, whatever its old label.
  if (air.pockets > 0) roomByLabel(grid, grid.label, roomBefore);
  if (labelsBefore.length < grid.label.length) labelsBefore = new Uint16Array(grid.label.length);
  labelsBefore.set(grid.label);
  const count = labelVoids(grid);
  const found: BedAir = {
    count,
    pockets: count - FIRST_POCKET,
    amount: new Float64Array(count),
    room: new Float64Array(count),
    gaugePa: new Float64Array(count),
    boundPa: new Float64Array(count),
    fresh: new Float64Array(count),
    cells: new Float64Array(count),
    burst: new Uint8Array(count),
    bursts: air.bursts,
  };
  if (found.pockets === 0) return found;
  handOn(grid, air, labelsBefore, roomBefore, found, fallMm);
  countCells(grid, found.cells);
  return found;
}

/** Pressure of each pocket in the space it has now (isothermal: pressure × volume is kept). */
export function pressAir(grid: BedGrid, air: BedAir): void {
  if (air.pockets === 0) return;
  roomByLabel(grid, grid.label, air.room.fill(0));
  for (let name = FIRST_POCKET; name < air.count; name += 1) {
    const room = air.room[name]!;
    // Where the tile rises air finds its way in: a thin wet bed holds no lasting suction.
    if (air.amount[name]! < ATMOSPHERE_PA * room) air.amount[name] = ATMOSPHERE_PA * room;
    air.gaugePa[name] = room > 0 ? air.amount[name]! / room - ATMOSPHERE_PA : 0;
  }
}

/** What the mortar round an empty cell resists with at the least, Pa; nothing round it resists without end. */
function leastRound(grid: BedGrid, n: number, yieldPa: number): number {
  const { state, pressure, gap, columns, cellMm } = grid;
  let least = Infinity;
  for (let side = 0; side < 4; side += 1) {
    const step = side === 0 ? -1 : side === 1 ? 1 : side === 2 ? -columns : columns;
    const next = n + step;
    if (state[next]! < FULL) continue;
    // The air stands at the front, which has crossed a part of this cell.
    const resists = pressure[next]! + (2 * yieldPa * cellMm * frontDistance(grid, n, n - step)) / gap[next]!;
    if (resists < least) least = resists;
  }
  return least;
}

/**
 * Lets air out where it beats the mortar round it: the march from the other fronts has reached the pocket's own edge
 * at less than the pocket's pressure, so the path between can be pushed aside. What is left stands at that pressure.
 * @returns what the air bears less than before, N: pockets behind lean on those that burst, and may burst next
 */
export function burstPockets(grid: BedGrid, air: BedAir, yieldPa: number): number {
  if (air.pockets === 0) return 0;
  const { label, state } = grid;
  const [first, past] = spanOf(grid);
  const bound = air.boundPa.fill(Infinity);
  for (let n = first; n < past; n += 1) {
    const name = label[n]!;
    if (name < FIRST_POCKET || state[n] !== EMPTY) continue;
    const resists = leastRound(grid, n, yieldPa);
    if (resists < bound[name]!) bound[name] = resists;
  }
  const area = grid.cellMm * grid.cellMm * 1e-6;
  let lost = 0;
  air.burst.fill(0);
  for (let name = FIRST_POCKET; name < air.count; name += 1) {
    if (air.gaugePa[name]! <= bound[name]! + LEVEL_PA) continue;
    // A pocket squeezed to nothing within a step would seem to lose without end; what counts is what it can hold.
    lost += Math.min(air.gaugePa[name]! - bound[name]!, bound[name]!) * air.cells[name]! * area;
    air.gaugePa[name] = bound[name]!;
    air.amount[name] = (bound[name]! + ATMOSPHERE_PA) * air.room[name]!;
    air.burst[name] = 1;
    air.bursts += 1;
  }
  return lost;
}

/**
 * What pockets that closed in a step might bear beyond what they do, N: they are taken to close half way through it, and
 * might have closed at its beginning.
 * @param fallMm fall of the tile in the step
 */
function lateN(grid: BedGrid, air: BedAir, fallMm: number): number {
  const area = grid.cellMm * grid.cellMm * 1e-6;
  let force = 0;
  for (let name = FIRST_POCKET; name < air.count; name += 1) {
    const part = air.room[name]! > 0 ? Math.min(1, air.fresh[name]! / air.room[name]!) : 0;
    if (part === 0) continue;
    const missed = (0.5 * part * ATMOSPHERE_PA * fallMm * air.cells[name]!) / air.room[name]!;
    force += Math.max(0, Math.min(missed, air.boundPa[name]! - air.gaugePa[name]!)) * air.cells[name]! * area;
  }
  return force;
}

/**
 * How much of a step should have been made, 1 when all: lanes must not close on so much of the load that it matters when
 * in the step they did.
 * @param fallMm fall of the tile in the step
 */
export function timelyPart(grid: BedGrid, air: BedAir, fallMm: number, loadN: number): number {
  const late = lateN(grid, air, fallMm);
  return late > LATE_SHARE * loadN ? Math.max(LEAST_PART, (0.8 * LATE_SHARE * loadN) / late) : 1;
}

/**
 * How far the tile may fall before the air under it takes up about half of a spare load, mm; no limit when all the air
 * could break out before it did.
 */
export function airStep(grid: BedGrid, air: BedAir, spareN: number): number {
  if (air.pockets === 0 || spareN <= 0) return Infinity;
  const { cells } = air;
  let empty = 0;
  for (const count of cells) empty += count;
  const area = grid.cellMm * grid.cellMm * 1e-6;
  // Mortar pressed out of the full cells takes room in the voids too.
  const squeezed = empty > 0 ? (grid.tileColumns * grid.tileRows) / empty : 1;
  let stiffness = 0;
  let most = 0;
  for (let name = FIRST_POCKET; name < air.count; name += 1) {
    const room = air.room[name]!;
    const spare = air.boundPa[name]! - air.gaugePa[name]!;
    if (room <= 0 || spare <= LEVEL_PA) continue;
    most += spare * cells[name]! * area;
    stiffness += ((air.gaugePa[name]! + ATMOSPHERE_PA) * cells[name]! * cells[name]! * squeezed * area) / room;
  }
  return most < LITTLE * spareN ? Infinity : (0.5 * spareN) / stiffness;
}
