import { readSetup } from '@sim/bed/read-setup.ts';
import type { BedSetup } from '@sim/bed/types.ts';

/** Small tiles keep a score of runs quick; every part of the solver is in one of them. */
const tile = { lengthMm: 160, widthMm: 120 };
const press = { do: 'press', forceN: 50 };
const slide = { do: 'slide', forceN: 60, strokeMm: 6, strokes: 3 };

const given: Record<string, object> = {
  'straight ridges, pressed': { tile, actions: [press] },
  'strokes across': { tile, actions: [press, slide] },
  'strokes along': { tile, actions: [press, { ...slide, directionDeg: 90 }] },
  'strokes aslant, slow': { tile, actions: [press, { ...slide, directionDeg: 37, speedMmS: 3 }] },
  'swirled, with air': { tile, comb: { pattern: 'swirl', seed: 11 }, actions: [press, slide] },
  'crossed ridges': { tile, comb: { pattern: 'crossed', directionDeg: 30 }, actions: [press, slide] },
  'a wobbling hand': { tile, comb: { pattern: 'wobble', seed: 5 }, actions: [press] },
  'a fan': { tile, comb: { pattern: 'fan' }, actions: [press, { ...slide, directionDeg: 15 }] },
  'drawn by hand': {
    tile,
    comb: {
      pattern: 'drawn',
      path: [
        [-90, -20],
        [-20, 10],
        [40, 0],
        [90, 30],
      ],
    },
    actions: [press],
  },
  'a flat layer, beaten in': { tile, comb: { pattern: 'flat' }, actions: [{ do: 'tap', energyJ: 0.6, blows: 3 }] },
  'bowed and twisted': {
    tile: { ...tile, bowLengthMm: 0.8, bowWidthMm: -0.3, twistMm: 0.4 },
    actions: [press, slide],
  },
  'a measured back on a floor out of flat': {
    tile: { ...tile, readings: { alongMm: [0, 0.3, 0.5, 0.2, 0], acrossMm: [0, 0.2, 0] } },
    floor: { bowLengthMm: 0.6, twistMm: -0.3 },
    actions: [press],
  },
  'pressed off centre, then turned': {
    tile,
    actions: [
      { ...press, atX: 50, atY: -30 },
      { do: 'twist', forceN: 60, angleDeg: 1.5, strokes: 3 },
    ],
  },
  vibrated: { tile, actions: [press, { do: 'vibrate', forceN: 40, seconds: 2 }] },
  'skinned, then pulled': { tile, mortar: { ageMin: 12 }, actions: [press, slide, { do: 'lift' }] },
  'buttered ribs on a V notch': {
    tile: { ...tile, relief: { shape: 'ribs', pitchMm: 20 } },
    trowel: { shape: 'v', widthMm: 6, depthMm: 5, toothMm: 2, yawDeg: 20 },
    butterMm: 0.6,
    actions: [press],
  },
  'dots under a U notch': {
    tile: { ...tile, relief: { shape: 'dots' } },
    trowel: { shape: 'u', widthMm: 10, depthMm: 9, toothMm: 8, wearMm: 1 },
    actions: [press, slide],
  },
  'a sheet of pieces on slanted ridges': {
    tile: { ...tile, thicknessMm: 4, pieces: { along: 4, across: 3, jointMm: 2 } },
    trowel: { shape: 'slanted', widthMm: 7, depthMm: 6, toothMm: 5 },
    actions: [press],
  },
};

/** The set-ups by name, complete. */
export const agreedBeds: [name: string, setup: BedSetup][] = Object.entries(given).map(([name, input]) => {
  const reading = readSetup({ cellMm: 1.8, ...input });
  if (!reading.ok) throw new Error(`${name}: ${reading.faults.map((fault) => JSON.stringify(fault)).join(', ')}`);
  return [name, reading.value.setup];
});
