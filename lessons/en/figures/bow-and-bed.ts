import { formatGap } from '@sim/units/format.ts';
import { inches } from '@sim/units/length.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import { press, slide, smallBed } from '@site/lessons/small-bed.ts';
import type { LiveFigure } from '@site/lessons/live-figure.ts';

const PUSH_N = 30;
const base = smallBed();

const notched = (depthIn: number) => (setup: BedSetup) => ({
  ...setup,
  trowel: { ...setup.trowel, depthMm: inches(depthIn) },
});

export const figure: LiveFigure = {
  module: 'bowed-tile',
  title: 'What a bow does to the bed',
  question:
    'A strip of tile is crowned: its middle stands higher than its ends. It is set on quarter-inch (6.4 mm) ridges, pressed and moved across. What share of its back is covered?',
  after:
    'Look where the lanes stayed open: under the crown, in the middle. Slide the bow to the other side of nought: now the tile is cupped, it rests on its middle, and the ends and corners go bare. Then flatten it, and then give it deeper ridges.',
  setup: {
    ...base,
    tile: { ...base.tile, lengthMm: 240, widthMm: 100 },
    trowel: { ...base.trowel, angleDeg: 45 },
    mortar: { ...base.mortar, yieldPa: 700 },
    actions: [press(PUSH_N), slide(0, 6, PUSH_N, 1)],
  },
  controls: [
    {
      kind: 'range',
      id: 'bow',
      label: 'Bow of the strip; below nought it is cupped',
      least: -2,
      most: 2,
      step: 0.5,
      start: 2,
      say: (value, units) => (value < 0 ? `−${formatGap(-value, units)}` : formatGap(value, units)),
      change: (setup, bowLengthMm) => ({ ...setup, tile: { ...setup.tile, bowLengthMm } }),
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
    {
      kind: 'choice',
      id: 'coat',
      label: 'Coat on the back',
      start: 0,
      options: [
        { label: 'none', change: (setup) => setup },
        { label: 'thin', change: (setup) => ({ ...setup, butterMm: 0.8 }) },
      ],
    },
  ],
};
