import { valueOf } from '@sim/rules/rulebook.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import { press, slide, smallBed } from '@site/lessons/small-bed.ts';
import type { LiveFigure } from '@site/lessons/live-figure.ts';

/** A steady hand's push on a piece of this size. */
const PUSH_N = 20;
const base = smallBed();

const mixed = (name: 'slumps' | 'holds' | 'stiff') => (setup: BedSetup) => ({
  ...setup,
  mortar: { ...setup.mortar, yieldPa: valueOf('mortar.stiffness', name) },
});

export const figure: LiveFigure = {
  module: 'mixing',
  title: 'One hand, three mixes',
  question:
    'The mix is stiff. The piece is pressed straight down with a steady hand. What share of its back is covered?',
  after:
    'The same hand on the soft mix fills the back without moving at all. Then why not mix it soft? Look at the rise in the joint: it comes up between the tiles. And this figure lets the ridges stand until the tile comes. On the job a mix that slumps lies down before that, shuts the lanes, and slides on a wall. Take the mix that holds a ridge, and move the tile.',
  setup: { ...base, actions: [press(PUSH_N)] },
  controls: [
    {
      kind: 'choice',
      id: 'mix',
      label: 'Mix',
      start: 2,
      options: [
        { label: 'slumps', change: mixed('slumps') },
        { label: 'holds a ridge', change: mixed('holds') },
        { label: 'stiff', change: mixed('stiff') },
      ],
    },
    {
      kind: 'choice',
      id: 'hands',
      label: 'Hands',
      start: 0,
      options: [
        { label: 'press only', change: (setup) => setup },
        {
          label: 'press, then move across',
          change: (setup) => ({ ...setup, actions: [press(PUSH_N), slide(0, 6, PUSH_N)] }),
        },
      ],
    },
  ],
};
