import type { Fault } from '../input/fault.ts';
import { pitchMm } from '../trowel/notch.ts';
import { strokeLong } from '../trowel/stroke.ts';
import { layOut } from './layout.ts';
import type { BedSetup, SurfaceSetup } from './types.ts';

/** More cells than this would keep a reader waiting and a phone out of memory. */
export const MOST_CELLS = 2_000_000;
/** Fewer to a ridge (or to a rib of the back) than this and it is not seen. */
const FEWEST_A_PITCH = 3;
/** A stroke shorter than this gives the comb no direction. */
const SHORTEST_STROKE_MM = 10;

/** Readings and the measures they stand for. */
function surfaceFaults(surface: SurfaceSetup, path: string): Fault[] {
  const { readings } = surface;
  if (!readings) return [];
  const faults: Fault[] = [];
  for (const name of ['bowLengthMm', 'bowWidthMm', 'twistMm'] as const)
    if ((surface[name] ?? 0) !== 0)
      faults.push({
        path: `${path}.${name}`,
        problem: `is ${surface[name]} beside ${path}.readings`,
        accepted: 'give readings, or bow and twist, not both',
      });
  const { gridMm, alongMm, acrossMm, diagonalsMm } = readings;
  const lines = [alongMm, acrossMm, diagonalsMm].some((line) => line !== undefined);
  if (lines === (gridMm !== undefined))
    faults.push({
      path: `${path}.readings`,
      problem: lines ? 'holds lines and a grid' : 'holds no readings',
      accepted: 'give alongMm, acrossMm and diagonalsMm (any of them), or gridMm alone',
    });
  gridMm?.forEach((row, n) => {
    if (row.length !== gridMm[0]!.length)
      faults.push({
        path: `${path}.readings.gridMm[${n}]`,
        problem: `is a list of ${row.length}, the first row has ${gridMm[0]!.length}`,
        accepted: 'give rows of one length',
      });
  });
  return faults;
}

/** A relief told twice, or too fine for the cells. */
function reliefFaults({ tile, cellMm }: BedSetup): Fault[] {
  if (!tile.relief) return [];
  const faults: Fault[] = [];
  if (tile.reliefMm !== 0)
    faults.push({
      path: 'tile.reliefMm',
      problem: `is ${tile.reliefMm} beside tile.relief`,
      accepted: 'give the relief by its mean depth or by its shape, not both',
    });
  if (tile.relief.pitchMm < FEWEST_A_PITCH * cellMm)
    faults.push({
      path: 'cellMm',
      problem: `is ${cellMm}, too coarse for a relief ${tile.relief.pitchMm} mm apart`,
      accepted: `give at most ${Number((tile.relief.pitchMm / FEWEST_A_PITCH).toFixed(2))} mm`,
    });
  return faults;
}

/** Nothing follows a lift: the bed under a lifted tile is combed anew. */
const liftFaults = ({ actions }: BedSetup): Fault[] =>
  actions.flatMap((action, n) =>
    action.do === 'lift' && n < actions.length - 1
      ? [
          {
            path: `actions[${n}]`,
            problem: 'is a lift with more to do after it',
            accepted: 'put the lift last, for a lifted tile gets a fresh bed',
          },
        ]
      : [],
  );

/** What the fields together make impossible. */
export function clashes(setup: BedSetup): Fault[] {
  const faults: Fault[] = [];
  const { tile, trowel, comb, cellMm } = setup;
  const { tileColumns, tileRows } = layOut(tile, cellMm);
  if (tileColumns * tileRows > MOST_CELLS)
    faults.push({
      path: 'cellMm',
      problem: `is ${cellMm}, which cuts the tile into ${Math.round(tileColumns * tileRows)} cells`,
      accepted: `give a larger cell, so that there are at most ${MOST_CELLS} cells`,
    });
  if (Math.min(tile.lengthMm, tile.widthMm) < 2 * cellMm)
    faults.push({
      path: 'cellMm',
      problem: `is ${cellMm}, over half the tile's side`,
      accepted: 'give a smaller cell or a larger tile',
    });
  if (comb.pattern !== 'flat' && pitchMm(trowel) < FEWEST_A_PITCH * cellMm)
    faults.push({
      path: 'cellMm',
      problem: `is ${cellMm}, too coarse for ridges ${Number(pitchMm(trowel).toFixed(2))} mm apart`,
      accepted: `give at most ${Number((pitchMm(trowel) / FEWEST_A_PITCH).toFixed(2))} mm`,
    });
  if (comb.pattern === 'drawn' && strokeLong(comb.path ?? []) < SHORTEST_STROKE_MM)
    faults.push({
      path: 'comb.path',
      problem: comb.path ? 'goes nowhere' : 'is missing, and the comb is to be drawn along it',
      accepted: `give the places of a stroke of at least ${SHORTEST_STROKE_MM} mm, or another comb.pattern`,
    });
  if (trowel.wearMm >= trowel.depthMm)
    faults.push({
      path: 'trowel.wearMm',
      problem: `is ${trowel.wearMm}, which leaves no notch`,
      accepted: 'give less than trowel.depthMm',
    });
  for (const [across, joints, side, name] of [
    [tile.pieces.along, tile.pieces.along - 1, tile.lengthMm, 'along'],
    [tile.pieces.across, tile.pieces.across - 1, tile.widthMm, 'across'],
  ] as const)
    if ((side - joints * tile.pieces.jointMm) / across < 4 * cellMm)
      faults.push({
        path: `tile.pieces.${name}`,
        problem: `is ${across}, which leaves pieces under four cells wide`,
        accepted: 'give fewer pieces, a narrower joint or a smaller cell',
      });
  setup.actions.forEach((action, n) => {
    if (action.do !== 'press' && action.do !== 'tap') return;
    for (const [value, half, name] of [
      [action.atX, tile.lengthMm / 2, 'atX'],
      [action.atY, tile.widthMm / 2, 'atY'],
    ] as const)
      if (Math.abs(value) > half)
        faults.push({
          path: `actions[${n}].${name}`,
          problem: `is ${value}, beside the tile`,
          accepted: `give a number from ${-half} to ${half} mm`,
        });
  });
  return [
    ...faults,
    ...surfaceFaults(tile, 'tile'),
    ...surfaceFaults(setup.floor, 'floor'),
    ...reliefFaults(setup),
    ...liftFaults(setup),
  ];
}
