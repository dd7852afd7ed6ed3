import { inches } from '@sim/units/length.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import { press, slide, smallBed } from '@site/lessons/small-bed.ts';
import type { LiveFigure } from '@site/lessons/live-figure.ts';

const PUSH_N = 25;
const MEAN_RELIEF_MM = 0.75;
const BOW_MM = 2;
const base = smallBed();

const backed = (reliefMm: number, butterMm: number) => (setup: BedSetup) => ({
  ...setup,
  tile: { ...setup.tile, reliefMm },
  butterMm,
});
const notched = (depthIn: number) => (setup: BedSetup) => ({
  ...setup,
  trowel: { ...setup.trowel, depthMm: inches(depthIn) },
});

export const figure: LiveFigure = {
  module: 'buttering-the-back',
  title: 'A ribbed back, with and without its coat',
  question:
    'A bowed piece with a ribbed back is set on quarter-inch (6.4 mm) ridges, pressed and moved across. The back has no coat. What share is covered?',
  after:
    'The ribs took mortar that the bow needed, and the middle came up short. Give the back its coat: the ribs are full before the tile touches the comb. A deeper notch helps too, so try both. Look at the thickness of the bed in the table, and ask of each whether it would pass in a shower.',
  setup: {
    ...base,
    tile: { ...base.tile, lengthMm: 240, widthMm: 100, bowLengthMm: BOW_MM },
    trowel: { ...base.trowel, angleDeg: 45 },
    mortar: { ...base.mortar, yieldPa: 700 },
    actions: [press(PUSH_N), slide(0, 6, PUSH_N, 1)],
  },
  controls: [
    {
      kind: 'choice',
      id: 'back',
      label: 'Back of the tile',
      start: 0,
      options: [
        { label: 'ribbed, bare', change: backed(MEAN_RELIEF_MM, 0) },
        { label: 'ribbed, ribs filled', change: backed(MEAN_RELIEF_MM, MEAN_RELIEF_MM) },
        { label: 'smooth, bare', change: backed(0, 0) },
        { label: 'smooth, thin coat', change: backed(0, MEAN_RELIEF_MM) },
      ],
    },
    {
      kind: 'choice',
      id: 'notch',
      label: 'Depth of the notch',
      start: 0,
      options: [
        { label: 'quarter inch (6.4 mm)', change: notched(1 / 4) },
        { label: 'three eighths (9.5 mm)', change: notched(3 / 8) },
      ],
    },
  ],
};
