/** A bed and its twins: the same bed mirrored, turned by a quarter and by a half, worked in the same way. */
import { actOn } from '@sim/bed/act.ts';
import { type Bed, settle, startBed } from '@sim/bed/bed.ts';
import { combBed } from '@sim/bed/fill.ts';
import type { BedGrid } from '@sim/bed/grid.ts';
import { press, withWeight } from '@sim/bed/press.ts';
import type { BedAction, BedSetup, SurfaceSetup } from '@sim/bed/types.ts';

export type Turning = 'mirror' | 'quarter' | 'half';
export const TURNINGS: Turning[] = ['mirror', 'quarter', 'half'];

/** Where a place of the bed lies in its twin. */
function placeIn(turning: Turning, x: number, y: number): [number, number] {
  if (turning === 'mirror') return [-x, y];
  return turning === 'quarter' ? [-y, x] : [-x, -y];
}

function surfaceIn(
  turning: Turning,
  surface: SurfaceSetup,
): Pick<SurfaceSetup, 'bowLengthMm' | 'bowWidthMm' | 'twistMm'> {
  const { bowLengthMm, bowWidthMm, twistMm = 0 } = surface;
  if (turning === 'half') return { bowLengthMm, bowWidthMm, twistMm };
  if (turning === 'mirror') return { bowLengthMm, bowWidthMm, twistMm: -twistMm };
  return { bowLengthMm: bowWidthMm, bowWidthMm: bowLengthMm, twistMm: -twistMm };
}

function directionIn(turning: Turning, degrees: number): number {
  if (turning === 'mirror') return 180 - degrees;
  return degrees + (turning === 'quarter' ? 90 : 180);
}

function actionIn(turning: Turning, action: BedAction): BedAction {
  if (action.do === 'slide') return { ...action, directionDeg: directionIn(turning, action.directionDeg) };
  if (action.do !== 'press' && action.do !== 'tap') return action;
  const [atX, atY] = placeIn(turning, action.atX, action.atY);
  return { ...action, atX, atY };
}

/** The twin's set-up but for its comb, whose mortar is carried over cell by cell. */
function setupIn(turning: Turning, setup: BedSetup): BedSetup {
  const { lengthMm, widthMm } = setup.tile;
  const sides = turning === 'quarter' ? { lengthMm: widthMm, widthMm: lengthMm } : { lengthMm, widthMm };
  return {
    ...setup,
    tile: { ...setup.tile, ...sides, ...surfaceIn(turning, setup.tile) },
    floor: { ...setup.floor, ...surfaceIn(turning, setup.floor) },
    actions: setup.actions.map((action) => actionIn(turning, action)),
  };
}

/** Carries combed mortar over to the twin's cells. */
function carry(turning: Turning, from: BedGrid, to: BedGrid): void {
  for (let row = 0; row < from.rows; row += 1)
    for (let column = 0; column < from.columns; column += 1) {
      const n = row * from.columns + column;
      const [x, y] = placeIn(turning, from.originMm[0] + column * from.cellMm, from.originMm[1] + row * from.cellMm);
      const c = Math.round((x - to.originMm[0]) / to.cellMm);
      const r = Math.round((y - to.originMm[1]) / to.cellMm);
      to.mortar[r * to.columns + c] = from.mortar[n]!;
      to.foot[r * to.columns + c] = from.foot[n]!;
    }
}

/** Lays the tile under its own weight and does the actions. */
function work(bed: Bed): Bed {
  press(bed, withWeight(bed, { forceN: 0, atX: 0, atY: 0 }));
  settle(bed);
  for (const action of bed.setup.actions) {
    actOn(bed, action, () => undefined);
    settle(bed);
  }
  return bed;
}

export const workedBed = (setup: BedSetup): Bed => work(startBed(setup));

export function workedTwin(setup: BedSetup, turning: Turning): Bed {
  const combed = combBed(setup);
  return work(
    startBed(setupIn(turning, setup), (grid) => {
      carry(turning, combed, grid);
    }),
  );
}
