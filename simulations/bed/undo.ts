import type { BedAir } from './air.ts';
import { type Bed, lowerTile } from './bed.ts';
import type { BedLoad } from './load.ts';

/** What a step changes beyond repair, a value a cell; shared by all beds, for only one takes a step at a time. Grown when short. */
let mortar = new Float64Array(0);
let pressure = new Float64Array(0);
let label = new Uint16Array(0);
let state = new Uint8Array(0);
let mark = new Uint8Array(0);

/** A bed before a step: its tile, its air and what it bore. */
export interface Before {
  height: number;
  slopeX: number;
  slopeY: number;
  outSum: number;
  air: BedAir;
  load: BedLoad;
}

/** Keeps a bed as it lies. Only the last one kept can be taken back. */
export function keep(bed: Bed): Before {
  const { grid, air } = bed;
  if (mortar.length < grid.mortar.length) {
    mortar = new Float64Array(grid.mortar.length);
    pressure = new Float64Array(grid.mortar.length);
    label = new Uint16Array(grid.mortar.length);
    state = new Uint8Array(grid.mortar.length);
    mark = new Uint8Array(grid.mortar.length);
  }
  mortar.set(grid.mortar);
  pressure.set(grid.pressure);
  label.set(grid.label);
  state.set(grid.state);
  mark.set(grid.mark);
  return {
    height: bed.height,
    slopeX: bed.slopeX,
    slopeY: bed.slopeY,
    outSum: bed.outSum,
    air: {
      ...air,
      amount: air.amount.slice(),
      gaugePa: air.gaugePa.slice(),
      room: air.room.slice(),
      boundPa: air.boundPa.slice(),
      fresh: air.fresh.slice(),
    },
    load: bed.load,
  };
}

/** Takes the step back that was made since `keep`: the tile up again, mortar and air where they were. */
export function takeBack(bed: Bed, before: Before): void {
  const { grid } = bed;
  const cells = grid.mortar.length;
  grid.mortar.set(mortar.subarray(0, cells));
  grid.pressure.set(pressure.subarray(0, cells));
  grid.label.set(label.subarray(0, cells));
  grid.state.set(state.subarray(0, cells));
  grid.mark.set(mark.subarray(0, cells));
  lowerTile(bed, bed.height - before.height, before.slopeX - bed.slopeX, before.slopeY - bed.slopeY);
  bed.outSum = before.outSum;
  bed.air = before.air;
  bed.terms.gaugePa = before.air.gaugePa;
  bed.load = before.load;
}
