import type { Fault, Reading } from '../input/fault.ts';
import { read } from '../input/read.ts';
import { pitchMm } from '../trowel/notch.ts';
import { strokeLong } from '../trowel/stroke.ts';
import { defaultActions, defaultSetup } from './defaults.ts';
import { layOut } from './layout.ts';
import { setupSchema } from './setup-schema.ts';
import type { BedSetup } from './types.ts';

export { defaultSetup } from './defaults.ts';

/** More cells than this would keep a reader waiting and a phone out of memory. */
export const MOST_CELLS = 2_000_000;
/** Fewer to a ridge than this and the ridge is not seen. */
const FEWEST_A_PITCH = 3;
/** A stroke shorter than this gives the comb no direction. */
const SHORTEST_STROKE_MM = 10;

export interface SetupReading {
  setup: BedSetup;
  /** Every value that was not given, by its path. */
  assumed: Record<string, unknown>;
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What was given over what is usual; each usual value that was used is noted by its path. */
function withDefaults<T extends object>(usual: T, given: object, path: string, assumed: Record<string, unknown>): T {
  const values = given as Record<string, unknown>;
  const whole: Record<string, unknown> = { ...values };
  for (const [name, value] of Object.entries(usual)) {
    const here = path === '' ? name : `${path}.${name}`;
    const own = values[name];
    if (isRecord(value)) whole[name] = withDefaults(value, isRecord(own) ? own : {}, here, assumed);
    else if (own === undefined) {
      whole[name] = value;
      assumed[here] = value;
    }
  }
  return whole as T;
}

/** What the fields together make impossible. */
function clashes(setup: BedSetup): Fault[] {
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
  return faults;
}

/**
 * Reads a set-up; every field may be left out.
 * @returns the complete set-up with what was assumed, or a fault for each field that is wrong, unknown or impossible
 */
export function readSetup(input: unknown): Reading<SetupReading> {
  const reading = read(setupSchema, input);
  if (!reading.ok) return reading;
  const assumed: Record<string, unknown> = {};
  const given = reading.value;
  const setup = withDefaults(defaultSetup(), given, '', assumed);
  setup.actions = (given.actions ?? []).map((action, n) =>
    withDefaults(defaultActions[action.do], action, `actions[${n}]`, assumed),
  );
  const faults = clashes(setup);
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: { setup, assumed } };
}
