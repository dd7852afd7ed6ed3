import { CELL_STATE, type BedFrame } from '../../bed/types.ts';
import { grain, softGrain } from '../grain.ts';

/** Mortar of a pulled bed, by the side it stayed on. mm; the two add up to the frame's mortar. */
export interface TornBed {
  onFloor: Float32Array;
  onTile: Float32Array;
}

/** Fresh mortar tears inside itself: about half stays on each face. How it tears is drawn, not computed. */
const HALF = 0.5;
const RAGGED = 0.3;
const LUMP_MM = 3.2;

/** Share of a column that stays on the tile where it is bonded: ragged, the same at every draw, mean one half. */
function shareOnTile(column: number, row: number, cellMm: number): number {
  const x = (column * cellMm) / LUMP_MM;
  const y = (row * cellMm) / LUMP_MM;
  const lumps = softGrain(x, y) * 0.6 + softGrain(x * 2.7 + 40, y * 2.7) * 0.28 + grain(column, row) * 0.12;
  return HALF + RAGGED * 2 * (lumps - 0.5);
}

/** Splits the mortar of a laid frame as it parts when the tile is pulled: only bonded cells leave any on the tile. */
export function tearBed(frame: BedFrame): TornBed {
  const cells = frame.columns * frame.rows;
  const onFloor = new Float32Array(cells);
  const onTile = new Float32Array(cells);
  for (let row = 0; row < frame.rows; row++) {
    for (let column = 0; column < frame.columns; column++) {
      const cell = row * frame.columns + column;
      const gap = frame.gapMm[cell]!;
      const mortar = Number.isNaN(gap) ? frame.mortarMm[cell]! : Math.min(frame.mortarMm[cell]!, gap);
      const taken = frame.state[cell] === CELL_STATE.bonded ? mortar * shareOnTile(column, row, frame.cellMm) : 0;
      onTile[cell] = taken;
      onFloor[cell] = mortar - taken;
    }
  }
  return { onFloor, onTile };
}
