import type { BedFrame, BedResult } from '@sim/bed/types.ts';
import { isLaid } from '@sim/view/laid.ts';
import { tileWindow, windowAspect } from '@sim/view/map/tile-window.ts';
import type { BedShown } from '@sim/view/scene/bench-view.ts';
import type { ViewName } from '@sim/view/scene/orbit.ts';

import type { Bench } from './bench.svelte.ts';
import { AT_REST, swayOf } from './sway.ts';
import { trowelRest } from './trowel-rest.ts';

const NO_AIR: BedResult['pockets'] = [];

/** The floor as it is combed for a bed that comes about later. */
const floorAhead = ({ cut, neighbours }: Bench, { setup, frame }: NonNullable<Bench['bed']['ahead']>): BedShown => ({
  setup,
  frame,
  tile: 'away',
  look: 'solid',
  pulled: false,
  trowel: null,
  cut,
  neighbours,
  air: NO_AIR,
  sway: AT_REST,
});

/** What the three-dimensional picture is to show now; null until there is a frame. */
export function bedShown(bench: Bench): BedShown | null {
  const { frame, shownSetup: setup } = bench;
  if (bench.bed.ahead) return floorAhead(bench, bench.bed.ahead);
  if (!frame) return null;
  const laid = isLaid(frame);
  const over = bench.stage === 'pulled' && bench.settled;
  const away = bench.stage === 'comb' || (!laid && bench.bed.result === null);
  return {
    setup,
    frame,
    tile: over ? bench.hold : away ? 'away' : laid ? 'down' : 'lifted',
    look: bench.open ? bench.look : 'solid',
    pulled: over && bench.hold !== 'down',
    // At rest the blade would stand between the eye and the cut.
    trowel:
      bench.stage === 'comb'
        ? (bench.trowelAt ?? (bench.cut ? null : trowelRest(setup.tile, setup.comb.directionDeg)))
        : null,
    cut: bench.open || !laid ? bench.cut : null,
    neighbours: bench.neighbours,
    air: bench.open && bench.settled && bench.look === 'clear' ? (bench.bed.result?.pockets ?? NO_AIR) : NO_AIR,
    sway: laid ? swayOf(bench.bed.frames, bench.at, setup) : AT_REST,
  };
}

/** The kept bed, at the same step as the one on the bench. */
export function keptShown(bench: Bench, beside: BedShown): BedShown | null {
  const { kept } = bench;
  if (!kept) return null;
  const combed = bench.stage === 'comb';
  return {
    ...beside,
    setup: kept.setup,
    frame: combed ? kept.combed : kept.last,
    tile: combed ? 'away' : bench.stage === 'pulled' ? bench.hold : 'down',
    pulled: bench.stage === 'pulled' && bench.hold !== 'down',
    trowel: null,
    air: beside.air.length > 0 ? kept.result.pockets : NO_AIR,
    sway: AT_REST,
  };
}

/** The view that suits a step of the work. */
export const viewFor = (bench: Bench): ViewName =>
  bench.stage === 'pulled' && bench.hold === 'turned' ? 'open' : 'bench';

/** A picture of the two-dimensional bench. */
export interface FlatFrame {
  frame: BedFrame;
  as: 'plan' | 'covered' | 'map';
}

/** Which picture the two-dimensional bench draws. Until the bed may be looked into, a laid tile hides it. */
export const flatFrame = (bench: Bench): FlatFrame | null => {
  if (!bench.frame) return null;
  const laid = bench.stage !== 'comb' && isLaid(bench.frame);
  return { frame: bench.frame, as: laid ? (bench.open ? 'map' : 'covered') : 'plan' };
};

/** Width over height of that picture. */
export const flatAspect = ({ frame, as }: FlatFrame): number =>
  as === 'map' ? windowAspect(tileWindow(frame)) : frame.columns / frame.rows;
