import { formatLength } from '@sim/units/format.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import { press, slide, smallBed } from '@site/lessons/small-bed.ts';
import type { LiveFigure } from '@site/lessons/live-figure.ts';

/** The share of a push of 160 N on a 12 × 24 in tile that falls on a hand-sized piece of it. */
const SHARE_N = 20;
const START_MM = 3;
const base = smallBed();

/** Turns the last slide of a set-up to another distance; a set-up that isn't moved stays as it is. */
const moved = (setup: BedSetup, strokeMm: number): BedSetup => ({
  ...setup,
  actions: setup.actions.map((action) => (action.do === 'slide' ? { ...action, strokeMm } : action)),
});

export const figure: LiveFigure = {
  module: 'what-the-ridges-are-for',
  title: 'Press only, or press and move',
  question: 'The piece is pressed straight down onto fresh, straight ridges. What share of its back will be covered?',
  after:
    'Pressing widened the ridges and stopped there: the lanes are still open. Now move the tile across the ridges, then along them, and change how far. Then try the swirl and look for shut-in air.',
  setup: { ...base, mortar: { ...base.mortar, yieldPa: 1000 } },
  controls: [
    {
      kind: 'choice',
      id: 'comb',
      label: 'Comb',
      start: 0,
      options: [
        { label: 'straight', change: (setup) => setup },
        { label: 'swirl', change: (setup) => ({ ...setup, comb: { ...setup.comb, pattern: 'swirl' } }) },
      ],
    },
    {
      kind: 'choice',
      id: 'hands',
      label: 'Hands',
      start: 0,
      options: [
        { label: 'press only', change: (setup) => ({ ...setup, actions: [press(SHARE_N)] }) },
        {
          label: 'move across',
          change: (setup) => ({ ...setup, actions: [press(SHARE_N), slide(0, START_MM, SHARE_N, 1)] }),
        },
        {
          label: 'move along',
          change: (setup) => ({ ...setup, actions: [press(SHARE_N), slide(90, START_MM, SHARE_N, 1)] }),
        },
      ],
    },
    {
      kind: 'range',
      id: 'far',
      label: 'How far it is moved, one way',
      least: 1,
      most: 8,
      step: 0.5,
      start: START_MM,
      say: (value, units) => formatLength(value, units),
      change: moved,
    },
  ],
};
