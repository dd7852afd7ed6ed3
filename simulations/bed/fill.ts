import { combedMeanMm, combField } from '../trowel/comb.ts';
import { backOf } from '../tile/relief.ts';
import { warpOf } from '../tile/warp.ts';
import { type BedGrid, EMPTY, makeGrid, OPEN } from './grid.ts';
import { layOut } from './layout.ts';
import { pieceAt } from './pieces.ts';
import type { BedSetup } from './types.ts';

/** Bare strips are left along the two edges that lie on the layout lines, and beyond them. */
const isBare = ({ tile, comb }: BedSetup, x: number, y: number): boolean =>
  comb.edgeBareMm > 0 && (x + tile.lengthMm / 2 < comb.edgeBareMm || y + tile.widthMm / 2 < comb.edgeBareMm);

/** Combed mortar on the floor, all of the grid. */
function comb(grid: BedGrid, setup: BedSetup): void {
  const { tile, trowel, comb: how } = setup;
  const field = combField(how, trowel, grid.cellMm, tile.lengthMm, tile.widthMm);
  const target = combedMeanMm(how, trowel);
  const spot = { heightMm: 0, footMm: 0 };
  let sum = 0;
  for (let row = 0, n = 0; row < grid.rows; row += 1) {
    const y = grid.originMm[1] + row * grid.cellMm;
    for (let column = 0; column < grid.columns; column += 1, n += 1) {
      field(grid.originMm[0] + column * grid.cellMm, y, spot);
      grid.mortar[n] = spot.heightMm;
      grid.foot[n] = spot.footMm;
      sum += spot.heightMm;
    }
  }
  // No pattern leaves more mortar than its notch lets through; straight ridges need no correction.
  const scale = sum > 0 && how.pattern !== 'straight' ? (target * grid.mortar.length) / sum : 1;
  if (scale === 1 && how.keyCoatMm === 0 && how.edgeBareMm === 0 && !how.flattened) return;
  for (let row = 0, n = 0; row < grid.rows; row += 1) {
    const y = grid.originMm[1] + row * grid.cellMm;
    for (let column = 0; column < grid.columns; column += 1, n += 1) {
      const bare = isBare(setup, grid.originMm[0] + column * grid.cellMm, y);
      const even = bare ? 0 : target + how.keyCoatMm;
      grid.mortar[n] = bare ? 0 : how.flattened ? even : grid.mortar[n]! * scale + how.keyCoatMm;
      grid.foot[n] = bare ? 0 : how.flattened ? even : grid.foot[n]! * scale + how.keyCoatMm;
    }
  }
}

/** The tile over the bed at its first touch, with its coat of mortar; the gap is under its mean plane at `height`. */
export function layTile(grid: BedGrid, setup: BedSetup): number {
  const { tile, floor, butterMm } = setup;
  const piece = pieceAt(tile);
  const back = warpOf(tile, tile.lengthMm, tile.widthMm);
  const ground = warpOf(floor, tile.lengthMm, tile.widthMm);
  const { recess, coat: coatAt } = backOf(tile, butterMm, grid.cellMm);
  let height = -Infinity;
  for (let row = grid.rim; row < grid.rim + grid.tileRows; row += 1) {
    const y = grid.originMm[1] + row * grid.cellMm;
    for (let column = grid.rim; column < grid.rim + grid.tileColumns; column += 1) {
      const x = grid.originMm[0] + column * grid.cellMm;
      const n = row * grid.columns + column;
      grid.gap[n] = back(x, y) + recess(x, y) - ground(x, y);
      grid.state[n] = piece(x, y) < 0 ? OPEN : EMPTY;
      if (grid.state[n] === OPEN) continue;
      const coat = coatAt(x, y);
      grid.mortar[n] = grid.mortar[n]! + coat;
      grid.foot[n] = grid.foot[n]! + coat;
      height = Math.max(height, grid.mortar[n]! - grid.gap[n]!);
    }
  }
  for (let n = 0; n < grid.gap.length; n += 1) grid.gap[n] = grid.gap[n]! + height;
  return height;
}

/** A combed bed, no tile yet. */
export function combBed(setup: BedSetup): BedGrid {
  const grid = makeGrid(layOut(setup.tile, setup.cellMm));
  comb(grid, setup);
  return grid;
}
