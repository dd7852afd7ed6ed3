import { formatLength } from '@sim/units/format.ts';
import { inches } from '@sim/units/length.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import { press, slide, smallBed } from '@site/lessons/small-bed.ts';
import type { LiveFigure } from '@site/lessons/live-figure.ts';

/** Two hands and some weight on a whole tile (in the range of the rule on pressing). */
const HANDS_N = 200;
const START_MM = 3;
const base = smallBed();
const pieceMm2 = base.tile.lengthMm * base.tile.widthMm;

/** The piece's share of the hands when it is a part of a square tile. */
const shareOf = (edgeIn: number): number => (HANDS_N * pieceMm2) / inches(edgeIn) ** 2;

const withForce = (forceN: number) => (setup: BedSetup) => ({
  ...setup,
  actions: setup.actions.map((action) => ('forceN' in action ? { ...action, forceN } : action)),
});
const withStroke = (setup: BedSetup, strokeMm: number): BedSetup => ({
  ...setup,
  actions: setup.actions.map((action) => (action.do === 'slide' ? { ...action, strokeMm } : action)),
});

export const figure: LiveFigure = {
  module: 'setting',
  title: 'Which way, how far, how big',
  question:
    'The piece is part of a large square tile, two feet or sixty centimetres a side, on half-inch (12.7 mm) ridges. Two hands press the tile straight down. What share of the back is covered?',
  after:
    'Hardly more than a tile that only rests. Now move it across and lengthen the stroke, a little at a time, up to the width of the notch. Then along, by the same strokes: it takes about twice as far to cover as much. Last, give the same hands a tile half as long each way: four times the push, and it tells. But you don’t choose the size of the tile.',
  setup: {
    ...base,
    trowel: { ...base.trowel, widthMm: inches(1 / 2), depthMm: inches(1 / 2), toothMm: inches(1 / 2) },
    mortar: { ...base.mortar, yieldPa: 700 },
  },
  controls: [
    {
      kind: 'choice',
      id: 'way',
      label: 'Hands',
      start: 0,
      options: [
        { label: 'press only', change: (setup) => ({ ...setup, actions: [press(0)] }) },
        { label: 'move across', change: (setup) => ({ ...setup, actions: [press(0), slide(0, START_MM, 0)] }) },
        { label: 'move along', change: (setup) => ({ ...setup, actions: [press(0), slide(90, START_MM, 0)] }) },
      ],
    },
    {
      kind: 'choice',
      id: 'size',
      label: 'The tile it is part of',
      start: 0,
      options: [
        { label: 'large', change: withForce(shareOf(24)) },
        { label: 'half as long each way', change: withForce(shareOf(12)) },
      ],
    },
    {
      kind: 'range',
      id: 'far',
      label: 'How far it is moved, there and back',
      least: 1.5,
      most: 13.5,
      step: 1.5,
      start: START_MM,
      say: (value, units) => formatLength(value, units),
      change: withStroke,
    },
  ],
};
