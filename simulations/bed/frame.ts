import { backOf } from '../tile/relief.ts';
import { warpOf } from '../tile/warp.ts';
import { FIRST_POCKET } from './label-voids.ts';
import type { Bed } from './bed.ts';
import { contactOf, coverage, transferOf } from './contact.ts';
import { type BedGrid, FRESH, OPEN } from './grid.ts';
import { bedSlope, drifted, freshSlope, type Slope } from './lean.ts';
import { type BedFrame, type BedSetup, CELL_STATE, type CellState } from './types.ts';

const DEGREES = 57.29577951308232;

function floorOf(grid: BedGrid, setup: BedSetup): Float32Array {
  const ground = warpOf(setup.floor, setup.tile.lengthMm, setup.tile.widthMm);
  const floor = new Float32Array(grid.mortar.length);
  for (let row = 0, n = 0; row < grid.rows; row += 1)
    for (let column = 0; column < grid.columns; column += 1, n += 1)
      floor[n] = ground(grid.originMm[0] + column * grid.cellMm, grid.originMm[1] + row * grid.cellMm);
  return floor;
}

/** A cell's lot between 0 and 1, so that a half-bonded area shows as an even speckle and not as noise that flickers. */
const lot = (n: number): number => (Math.imul(n ^ (n >>> 7), 0x9e3779b1) >>> 0) / 4294967296;

function stateOf(bed: Bed, n: number, insideTile: boolean, pressed: number): CellState {
  const { state, label, mark } = bed.grid;
  if (state[n] === OPEN) return insideTile ? CELL_STATE.joint : CELL_STATE.outside;
  if (contactOf(bed, n) >= 0.5)
    return (mark[n]! & FRESH) !== 0 || lot(n) < pressed ? CELL_STATE.bonded : CELL_STATE.skinned;
  return label[n]! >= FIRST_POCKET ? CELL_STATE.trapped : CELL_STATE.open;
}

const leaning = (slope: Slope | null): { leanSlope?: Slope } => (slope ? { leanSlope: slope } : {});

/** The combed bed before the tile is laid. */
export function combedFrame(grid: BedGrid, setup: BedSetup): BedFrame {
  return {
    columns: grid.columns,
    rows: grid.rows,
    cellMm: grid.cellMm,
    originMm: [...grid.originMm],
    mortarMm: Float32Array.from(grid.mortar),
    floorMm: floorOf(grid, setup),
    gapMm: new Float32Array(grid.mortar.length).fill(NaN),
    state: new Uint8Array(grid.mortar.length),
    action: -1,
    offsetMm: [0, 0],
    coverage: 0,
    tileHeightMm: NaN,
    tiltDeg: [0, 0],
    loadN: 0,
    ...leaning(freshSlope(setup)),
  };
}

/** A picture of the bed as it is; its arrays are new. */
export function bedFrame(bed: Bed, action: number, offsetMm: [number, number] = [0, 0]): BedFrame {
  const { grid, setup } = bed;
  const { columns, rows, rim, tileColumns, tileRows } = grid;
  const { coat } = backOf(setup.tile, setup.butterMm, grid.cellMm);
  const mortar = Float32Array.from(grid.mortar);
  const gap = new Float32Array(mortar.length).fill(NaN);
  const state = new Uint8Array(mortar.length);
  const { pressed } = transferOf(bed);
  for (let row = 0, n = 0; row < rows; row += 1)
    for (let column = 0; column < columns; column += 1, n += 1) {
      const inside = row >= rim && row < rim + tileRows && column >= rim && column < rim + tileColumns;
      state[n] = stateOf(bed, n, inside, pressed);
      if (grid.state[n] === OPEN) continue;
      gap[n] = grid.gap[n]!;
      // The coat hangs on the back; only where it has met the bed does it belong to the column on the floor.
      if (contactOf(bed, n) === 0)
        mortar[n] = Math.max(
          0,
          grid.mortar[n]! - coat(grid.originMm[0] + column * grid.cellMm, grid.originMm[1] + row * grid.cellMm),
        );
    }
  return {
    columns,
    rows,
    cellMm: grid.cellMm,
    originMm: [...grid.originMm],
    mortarMm: mortar,
    floorMm: floorOf(grid, setup),
    gapMm: gap,
    state,
    action,
    offsetMm,
    coverage: coverage(bed),
    tileHeightMm: bed.height,
    tiltDeg: [bed.slopeX * DEGREES, bed.slopeY * DEGREES],
    loadN: bed.load.forceN,
    ...leaning(bedSlope(bed)),
    ...drifted(bed),
  };
}
