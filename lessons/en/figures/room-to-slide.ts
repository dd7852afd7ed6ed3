import type { BedSetup } from '@sim/bed/types.ts';
import { press, slide, smallBed } from '@site/lessons/small-bed.ts';
import type { LiveFigure } from '@site/lessons/live-figure.ts';
import { notchById } from '@site/lessons/worked/notch.ts';
import { slideWorked } from '@site/lessons/worked/slide.ts';

/** The share of a push of 150 N on a 24 × 48 in tile that falls on a hand-sized piece of it. */
const SHARE_N = 5;
/** Mortar for large tile stands up: between a mix that holds a ridge and a stiff one (rule mortar.stiffness). */
const YIELD_PA = 700;
const small = smallBed();
const base = { ...small, mortar: { ...small.mortar, yieldPa: YIELD_PA } };

const notched =
  (id: string) =>
  (setup: BedSetup): BedSetup => {
    const { shape, widthMm, depthMm, toothMm } = notchById(id);
    return { ...setup, trowel: { ...setup.trowel, shape, widthMm, depthMm, toothMm } };
  };

export const figure: LiveFigure = {
  module: 'large-tile-and-panels',
  title: 'A wide notch in a narrow joint',
  question:
    'A piece of large tile lies on half-inch (12.7 mm) ridges. It is pressed and shaken there and back by the width of a thin joint. What share of its back will be covered?',
  after:
    'The shake closed a part of each lane and no more. Now lay it off its place and push it in from a notch’s width away. Then shake a notch half as wide. A thin coat on the back closes no lane by itself. Ridges that lean give way under about two thirds of the push, and the tile goes aside with them. That is a model, not measured: for a slanted notch, lift and look.',
  setup: base,
  controls: [
    {
      kind: 'choice',
      id: 'notch',
      label: 'Notch',
      start: 0,
      options: [
        { label: 'half-inch square (12.7 mm)', change: notched(slideWorked.notch) },
        { label: 'a quarter wide, half deep (6.4 × 12.7 mm)', change: notched('1-4-1-2-in-square') },
      ],
    },
    {
      kind: 'choice',
      id: 'move',
      label: 'How it is moved',
      start: 0,
      options: [
        {
          label: 'shaken in the joint',
          change: (setup) => ({ ...setup, actions: [press(SHARE_N), slide(0, slideWorked.jointMm, SHARE_N, 2)] }),
        },
        {
          label: 'pushed in from off its place',
          change: (setup) => ({ ...setup, actions: [press(SHARE_N), slide(0, slideWorked.laneMm, SHARE_N, 1)] }),
        },
        { label: 'pressed only', change: (setup) => ({ ...setup, actions: [press(SHARE_N)] }) },
      ],
    },
    {
      kind: 'choice',
      id: 'back',
      label: 'Back of the tile',
      start: 0,
      options: [
        { label: 'bare', change: (setup) => setup },
        { label: 'thin coat', change: (setup) => ({ ...setup, butterMm: 1 }) },
      ],
    },
  ],
};
