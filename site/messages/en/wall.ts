import type { DemonstrationId, PairFacts } from '@site/islands/bench/wall/demonstrations.ts';

interface DemonstrationWords {
  title: string;
  /** The figures in what is asked and in the beds' names are those of the set-ups. */
  ask: (facts: PairFacts) => string;
  first: (facts: PairFacts) => string;
  second: (facts: PairFacts) => string;
  why: string;
}

/** Words of the bench on the wall. */
export const wall = {
  title: 'The bench on the wall',
  description: 'Prepared pairs of beds for a class: ask, set, pull, see why.',
  leave: 'Back to the bench',
  number: (at: number, of: number) => `${at} of ${of}`,
  next: 'Next',
  back: 'Back',
  keys: 'Arrow keys, page keys or a presenter’s clicker go on and back; 1 to 6 choose a pair.',
  choose: 'Pairs',
  combed: 'Combed. Ask the class before you go on.',
  set: 'Set. Hands up: which back is fuller, and by how much?',
  pulled: 'Pulled.',
  working: 'Computing',
  result: (bed: string, share: string) => `${bed}: ${share}.`,
  demonstrations: {
    swirl: {
      title: 'Straight or swirled?',
      ask: () => 'Same trowel, same mortar, same push. Which back is fuller?',
      first: () => 'Straight',
      second: () => 'Swirled',
      why: 'Straight ridges leave the air a way out to the edge. Where swirls cross they shut it in, and shut-in air carries the tile.',
    },
    along: {
      title: 'Slide across or along?',
      ask: () =>
        'Both tiles are pushed lightly and slid the same way there and back. Across the ridges, or along them?',
      first: () => 'Across the ridges',
      second: () => 'Along the ridges',
      why: 'Across, every millimetre of slide smears each ridge a millimetre wider. Along, the ridge is only dragged down its own length.',
    },
    bow: {
      title: 'A bowed tile: which notch?',
      ask: ({ bow }) => `The middle stands ${bow} higher than the ends. Will a small notch reach it?`,
      first: ({ notches }) => notches[0],
      second: ({ notches }) => notches[1],
      why: 'The bed must be thicker than the bow is high. A small notch has no mortar left to reach the middle.',
    },
    skin: {
      title: 'Fresh or skinned?',
      ask: ({ minutes }) =>
        `One tile goes down at once, the other after ${minutes} minutes in still air. Both are pushed alike, and both beds look wet.`,
      first: () => 'At once',
      second: ({ minutes }) => `After ${minutes} minutes`,
      why: 'Skin takes the print of the tile and lets go of it. The hatched part touched the back and did not hold.',
    },
    mosaic: {
      title: 'Mosaic: ridges up or knocked flat?',
      ask: () => 'Small pieces, many joints. What comes up through them, and what stays bare?',
      first: () => 'Ridges standing',
      second: () => 'Ridges knocked flat',
      why: 'Ridges come up in the joints and leave lanes under the pieces at once. Knocked flat, the bed is even before the sheet goes down.',
    },
    butter: {
      title: 'A ribbed back: coat it?',
      ask: ({ relief }) => `Ribs ${relief} deep stand on the back. Does a coat on it change anything?`,
      first: () => 'Coated',
      second: () => 'Not coated',
      why: 'The hollows between the ribs take mortar before the bed is full. A coat fills them first, so that the ridges need not.',
    },
  } satisfies Record<DemonstrationId, DemonstrationWords>,
} as const;
