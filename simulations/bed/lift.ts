import { backOf } from '../tile/relief.ts';
import { ATMOSPHERE_PA } from './air.ts';
import type { Bed } from './bed.ts';
import { contactOf, transferOf } from './contact.ts';
import { FRESH, FULL, OPEN } from './grid.ts';
import type { BedFrame, LiftedTile } from './types.ts';

/** Fresh mortar parts inside itself and holds to both faces alike, so half of it comes up (model). */
export const COMES_UP = 0.5;

/** A lift as figures and as two fields. */
export interface Lift {
  figures: LiftedTile;
  onTileMm: Float32Array;
  onFloorMm: Float32Array;
}

/**
 * What keeps a tile down in a straight pull: the mortar drawn back under it bears at yield in tension what it bears in
 * compression, but nowhere more than the atmosphere over it (model).
 */
function pullForce(bed: Bed): number {
  const { state, pressure, cellMm } = bed.grid;
  let beyond = 0;
  for (let n = 0; n < state.length; n += 1)
    if (state[n]! >= FULL && pressure[n]! > ATMOSPHERE_PA) beyond += pressure[n]! - ATMOSPHERE_PA;
  return bed.load.forceN - bed.load.airN - beyond * cellMm * cellMm * 1e-6 + bed.weightN;
}

/**
 * Parts the bed. Where the tile was bonded the column parts in its middle, and what fills the back's hollows stays
 * there; where it was not, the coat stays on the back and the ridge on the floor, as a skinned bed does. Nothing is lost.
 */
export function liftTile(bed: Bed): Lift {
  const { grid, setup } = bed;
  const { mortar, state, mark, columns, rim, tileColumns, tileRows, cellMm, originMm } = grid;
  const { coat: coatAt } = backOf(setup.tile, setup.butterMm, cellMm);
  const { pressed, fresh } = transferOf(bed);
  const onTileMm = new Float32Array(mortar.length);
  const onFloorMm = Float32Array.from(mortar, (column) => Math.max(0, column));
  const area = cellMm * cellMm;
  let up = 0;
  let left = 0;
  let wet = 0;
  let back = 0;
  for (let row = rim; row < rim + tileRows; row += 1)
    for (let column = rim; column < rim + tileColumns; column += 1) {
      const n = row * columns + column;
      if (state[n] === OPEN) {
        left += mortar[n]!;
        continue;
      }
      const coat = coatAt(originMm[0] + column * cellMm, originMm[1] + row * cellMm);
      const hollow = Math.max(0, -coat);
      const bonded = contactOf(bed, n) * ((mark[n]! & FRESH) !== 0 ? fresh : pressed);
      const taken = bonded * (COMES_UP * mortar[n]! + hollow) + (1 - bonded) * Math.max(0, coat);
      const stays = mortar[n]! + hollow - taken;
      onTileMm[n] = taken;
      onFloorMm[n] = Math.max(0, stays);
      up += taken;
      left += stays;
      wet += coat > 0 ? 1 : bonded;
      back += 1;
    }
  const figures = {
    pullN: pullForce(bed),
    onTileMm3: up * area,
    onFloorMm3: left * area,
    backWet: back > 0 ? wet / back : 0,
  };
  return { figures, onTileMm, onFloorMm };
}

/** A picture of the bed with what each side kept. */
export const liftedFrame = (frame: BedFrame, { onTileMm, onFloorMm }: Lift): BedFrame => ({
  ...frame,
  onTileMm: onTileMm.slice(),
  onFloorMm: onFloorMm.slice(),
});
