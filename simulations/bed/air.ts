import { type BedGrid, EMPTY, FULL } from './grid.ts';
import { FIRST_POCKET, labelVoids } from './label-voids.ts';

/** Normal atmosphere, Pa (standard atmosphere). */
export const ATMOSPHERE_PA = 101_325;

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
  bursts: 0,
});

const space = (grid: BedGrid, n: number): number => Math.max(0, grid.gap[n]! - grid.mortar[n]!);

function eachEmpty(grid: BedGrid, visit: (n: number) => void): void {
  const { state, columns, rim, tileColumns, tileRows } = grid;
  for (let row = rim; row < rim + tileRows; row += 1) {
    const start = row * columns + rim;
    for (let n = start; n < start + tileColumns; n += 1) if (state[n] === EMPTY) visit(n);
  }
}

/**
 * Finds the voids again and hands each the air that was in its place: the amount is kept however pockets close, part
 * or join; what was open brings air at the atmosphere's pressure.
 */
export function findVoids(grid: BedGrid, air: BedAir): BedAir {
  const roomBefore = new Float64Array(air.count);
  eachEmpty(grid, (n) => {
    const old = grid.label[n]!;
    roomBefore[old] = roomBefore[old]! + space(grid, n);
  });
  const before = grid.label.slice();
  const count = labelVoids(grid);
  const amount = new Float64Array(count);
  eachEmpty(grid, (n) => {
    const old = before[n]!;
    const name = grid.label[n]!;
    const room = space(grid, n);
    const held = old >= FIRST_POCKET && roomBefore[old]! > 0 ? air.amount[old]! / roomBefore[old]! : ATMOSPHERE_PA;
    amount[name] = amount[name]! + held * room;
  });
  return {
    count,
    pockets: count - FIRST_POCKET,
    amount,
    room: new Float64Array(count),
    gaugePa: new Float64Array(count),
    boundPa: new Float64Array(count),
    bursts: air.bursts,
  };
}

/** Pressure of each pocket in the space it has now (isothermal: pressure × volume is kept). */
export function pressAir(grid: BedGrid, air: BedAir): void {
  if (air.pockets === 0) return;
  air.room.fill(0);
  eachEmpty(grid, (n) => {
    const name = grid.label[n]!;
    air.room[name] = air.room[name]! + space(grid, n);
  });
  for (let name = FIRST_POCKET; name < air.count; name += 1) {
    const room = air.room[name]!;
    // Where the tile rises air finds its way in: a thin wet bed holds no lasting suction.
    if (air.amount[name]! < ATMOSPHERE_PA * room) air.amount[name] = ATMOSPHERE_PA * room;
    air.gaugePa[name] = room > 0 ? air.amount[name]! / room - ATMOSPHERE_PA : 0;
  }
}

/**
 * Lets air out where it beats the mortar round it: the march from the other fronts has reached the pocket's own edge
 * at less than the pocket's pressure, so the path between can be pushed aside. What is left stands at that pressure.
 */
export function burstPockets(grid: BedGrid, air: BedAir, yieldPa: number): void {
  if (air.pockets === 0) return;
  const { label, state, pressure, gap, columns, cellMm } = grid;
  const bound = air.boundPa.fill(Infinity);
  eachEmpty(grid, (n) => {
    const name = label[n]!;
    if (name < FIRST_POCKET) return;
    for (let side = 0; side < 4; side += 1) {
      const next = side === 0 ? n - 1 : side === 1 ? n + 1 : side === 2 ? n - columns : n + columns;
      if (state[next]! < FULL) continue;
      const resists = pressure[next]! + (yieldPa * cellMm) / gap[next]!;
      if (resists < bound[name]!) bound[name] = resists;
    }
  });
  for (let name = FIRST_POCKET; name < air.count; name += 1) {
    if (air.gaugePa[name]! <= bound[name]!) continue;
    air.gaugePa[name] = bound[name]!;
    air.amount[name] = (bound[name]! + ATMOSPHERE_PA) * air.room[name]!;
    air.bursts += 1;
  }
}

/**
 * How far the tile may fall before the air under it takes up about half of a spare load, mm; no limit when all the air
 * could break out before it did.
 */
export function airStep(grid: BedGrid, air: BedAir, spareN: number): number {
  if (air.pockets === 0 || spareN <= 0) return Infinity;
  const cells = new Float64Array(air.count);
  let empty = 0;
  eachEmpty(grid, (n) => {
    const name = grid.label[n]!;
    cells[name] = cells[name]! + 1;
    empty += 1;
  });
  const area = grid.cellMm * grid.cellMm * 1e-6;
  // Mortar pressed out of the full cells takes room in the voids too.
  const squeezed = empty > 0 ? (grid.tileColumns * grid.tileRows) / empty : 1;
  let stiffness = 0;
  let most = 0;
  for (let name = FIRST_POCKET; name < air.count; name += 1) {
    const room = air.room[name]!;
    const spare = air.boundPa[name]! - air.gaugePa[name]!;
    if (room <= 0 || spare <= 0) continue;
    most += spare * cells[name]! * area;
    stiffness += ((air.gaugePa[name]! + ATMOSPHERE_PA) * cells[name]! * cells[name]! * squeezed * area) / room;
  }
  return most < 0.5 * spareN ? Infinity : (0.5 * spareN) / stiffness;
}
