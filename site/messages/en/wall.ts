import type { DemonstrationId } from '@site/islands/bench/wall/demonstrations.ts';

interface DemonstrationWords {
  title: string;
  ask: string;
  first: string;
  second: string;
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
  result: (first: string, second: string) => `Left ${first}, right ${second}.`,
  demonstrations: {
    swirl: {
      title: 'Straight or swirled?',
      ask: 'Same trowel, same mortar, same push. Which back is fuller?',
      first: 'Straight',
      second: 'Swirled',
      why: 'Straight ridges leave the air a way out to the edge. Where swirls cross they shut it in, and shut-in air carries the tile.',
    },
    along: {
      title: 'Slide across or along?',
      ask: 'Both tiles are pushed lightly and slid the same way there and back. Across the ridges, or along them?',
      first: 'Across the ridges',
      second: 'Along the ridges',
      why: 'Across, every millimetre of slide smears each ridge a millimetre wider. Along, the ridge is only dragged down its own length.',
    },
    bow: {
      title: 'A bowed tile: which notch?',
      ask: 'The middle stands 5/64 in (2 mm) higher than the ends. Will a small notch reach it?',
      first: '1/2 × 1/2 in',
      second: '1/4 × 1/4 in',
      why: 'The bed must be thicker than the bow is high. A small notch has no mortar left to reach the middle.',
    },
    skin: {
      title: 'Fresh or skinned?',
      ask: 'One tile goes down at once, the other after 40 minutes in still air. Both are pushed alike, and both beds look wet.',
      first: 'At once',
      second: 'After 40 minutes',
      why: 'Skin takes the print of the tile and lets go of it. The hatched part touched the back and did not hold.',
    },
    mosaic: {
      title: 'Mosaic: ridges up or knocked flat?',
      ask: 'Small pieces, many joints. What comes up through them, and what stays bare?',
      first: 'Ridges standing',
      second: 'Ridges knocked flat',
      why: 'Ridges come up in the joints and leave lanes under the pieces at once. Knocked flat, the bed is even before the sheet goes down.',
    },
    butter: {
      title: 'A ribbed back: coat it?',
      ask: 'Ribs 3/64 in (1.2 mm) deep stand on the back. Does a coat on it change anything?',
      first: 'Coated',
      second: 'Not coated',
      why: 'The hollows between the ribs take mortar before the bed is full. A coat fills them first, so that the ridges need not.',
    },
  } satisfies Record<DemonstrationId, DemonstrationWords>,
} as const;
