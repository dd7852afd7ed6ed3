import { inches } from '@sim/units/length.ts';
import type { BedSetup, CombPattern } from '@sim/bed/types.ts';
import { press, slide, smallBed } from '@site/lessons/small-bed.ts';
import type { LiveFigure } from '@site/lessons/live-figure.ts';

const LIGHT_N = 20;
const HARD_N = 40;
const TRAVEL_MM = 6;
const base = smallBed();

const combed = (pattern: CombPattern) => (setup: BedSetup) => ({ ...setup, comb: { ...setup.comb, pattern } });
const pushed = (forceN: number) => (setup: BedSetup) => ({
  ...setup,
  actions: [press(forceN), slide(0, TRAVEL_MM, forceN)],
});

export const figure: LiveFigure = {
  module: 'combing',
  title: 'The same mortar, combed four ways',
  question:
    'The bed was combed straight, and then once more at right angles. The piece is pressed and moved there and back. What share of its back is covered?',
  after:
    'Crossed combing leaves blocks with shut holes between them. The air has no way out, so it carries the tile, and a push twice as hard gains little: it only squeezes it. Now comb straight with the steady hand. Then the wobbling hand: its lanes are crooked but open. Then the swirl.',
  setup: {
    ...base,
    trowel: { ...base.trowel, depthMm: inches(1 / 4) },
    mortar: { ...base.mortar, yieldPa: 900 },
  },
  controls: [
    {
      kind: 'choice',
      id: 'comb',
      label: 'Comb',
      start: 0,
      options: [
        { label: 'both ways', change: combed('crossed') },
        { label: 'straight', change: combed('straight') },
        { label: 'a wobbling hand', change: combed('wobble') },
        { label: 'swirl', change: combed('swirl') },
      ],
    },
    {
      kind: 'choice',
      id: 'push',
      label: 'Push',
      start: 0,
      options: [
        { label: 'a steady hand', change: pushed(LIGHT_N) },
        { label: 'twice as hard', change: pushed(HARD_N) },
      ],
    },
  ],
};
