import { defaultActions, defaultSetup } from '@sim/bed/defaults.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import { pitchMm } from '@sim/trowel/notch.ts';

/** Cells to a ridge pitch that the bench aims at, and the fewest it accepts before it spends more cells. */
const CELLS_A_PITCH = 16;
const FEWEST_A_PITCH = 8;
/** Cells a run may have so that it ends in about a second on a school laptop. */
const COMFORT_CELLS = 110_000;
const MOST_CELLS = 420_000;
/** A first look while a slider moves: coarse, done in a few hundredths of a second. */
const GLANCE_CELLS = 7_000;
const GLANCE_A_PITCH = 5;

/** Cells to a rib or dot of a back's relief, so that its walls stand where they are. */
const CELLS_A_RIB = 6;

const cellFor = (setup: BedSetup, aPitch: number, fewest: number, comfort: number): number => {
  const { lengthMm, widthMm, relief } = setup.tile;
  const area = lengthMm * widthMm;
  const rib = relief ? (relief.pitchMm * fewest) / CELLS_A_RIB : Infinity;
  const pitch = Math.min(pitchMm(setup.trowel), rib);
  const wanted = Math.max(pitch / aPitch, Math.sqrt(area / comfort));
  return Math.max(Math.min(wanted, pitch / fewest), Math.sqrt(area / MOST_CELLS));
};

/** The set-up with cells small enough for its ridges and few enough to be quick. */
export const withCells = (setup: BedSetup): BedSetup => ({
  ...setup,
  cellMm: cellFor(setup, CELLS_A_PITCH, FEWEST_A_PITCH, COMFORT_CELLS),
});

/** The same bed in coarse cells, for the moment in which a control moves. */
export const atAGlance = (setup: BedSetup): BedSetup => ({
  ...setup,
  cellMm: cellFor(setup, FEWEST_A_PITCH, GLANCE_A_PITCH, GLANCE_CELLS),
});

/** What lies on the bench when one comes to it: a common tile with a slight bow, combed along its short side. */
export function startSetup(): BedSetup {
  const setup = defaultSetup();
  return withCells({ ...setup, tile: { ...setup.tile, bowLengthMm: 0.8 }, actions: [{ ...defaultActions.press }] });
}
