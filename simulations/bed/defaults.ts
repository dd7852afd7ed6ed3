import { SKIN_MIN } from '../mortar/skin.ts';
import type { BedAction, BedSetup, ReliefSetup } from './types.ts';

/**
 * What a field left out means. A common 12 × 24 in floor tile on a common comb; mortar from the middle of the working
 * range (from memory), tile density that of porcelain (from memory).
 */
export const defaultSetup = (): BedSetup => ({
  tile: {
    lengthMm: 610,
    widthMm: 305,
    thicknessMm: 9,
    densityKgM3: 2300,
    bowLengthMm: 0,
    bowWidthMm: 0,
    twistMm: 0,
    reliefMm: 0,
    pieces: { along: 1, across: 1, jointMm: 3 },
  },
  floor: { bowLengthMm: 0, bowWidthMm: 0, twistMm: 0 },
  trowel: { shape: 'square', widthMm: 12.7, depthMm: 12.7, toothMm: 12.7, angleDeg: 60, wearMm: 0, yawDeg: 0 },
  comb: { pattern: 'straight', directionDeg: 90, keyCoatMm: 0, flattened: false, edgeBareMm: 0, seed: 1 },
  mortar: { yieldPa: 500, viscosityPaS: 10, ageMin: 0, skinMin: SKIN_MIN },
  butterMm: 0,
  actions: [],
  cellMm: 1.27,
  physics: { endTerm: true, weight: true, air: true, viscosity: true },
});

/** What a field left out of a relief means: ribs as on the back of much pressed tile (common practice, no published source). */
export const defaultRelief = (): ReliefSetup => ({
  shape: 'ribs',
  pitchMm: 25,
  depthMm: 1,
  directionDeg: 0,
  raisedShare: 0.3,
});

/** What a field left out of an action means. */
export const defaultActions: { [K in BedAction['do']]: Extract<BedAction, { do: K }> } = {
  press: { do: 'press', forceN: 200, atX: 0, atY: 0 },
  slide: { do: 'slide', forceN: 200, strokeMm: 6, strokes: 2, directionDeg: 0, speedMmS: 20 },
  twist: { do: 'twist', forceN: 200, angleDeg: 1, strokes: 2, speedMmS: 20 },
  tap: { do: 'tap', energyJ: 1, blows: 4, atX: 0, atY: 0 },
  vibrate: { do: 'vibrate', forceN: 100, amplitudeMm: 0.2, frequencyHz: 60, seconds: 3 },
  lift: { do: 'lift' },
};
