import type { Words } from '../../engine/say.ts';

export const setting: Record<string, Words> = {
  'setting/how-far': {
    story: 'You combed with a {notch} trowel. The tile lies on its ridges.',
    ask: 'How far must it travel across the ridges, there and back, so that each ridge fills the valley beside it?',
    why: 'A ridge is {width} wide and has to be dragged over its own width.',
    views:
      'Sources differ: a contractors’ manual is content with {from} to {to}. With a wide notch that leaves lines of voids.',
  },
  'setting/one-stroke': {
    'story-across':
      'Ridges from a {notch} trowel stand {pitch} apart. A tile rests on them and you move it once, lightly, {stroke} across the ridges.',
    'story-along':
      'Ridges from a {notch} trowel stand {pitch} apart. A tile rests on them and you move it once, lightly, {stroke} along the ridges.',
    ask: 'By how much does coverage go up? (Share of the back, in points.)',
    'why-across': 'Each ridge is smeared {stroke} further in every {pitch}: {gain}.',
    'why-along':
      'Moved along its own ridges at a light load, the tile slides on their tops and no valley is filled. Across, the same stroke would have added {gain}.',
  },
  'setting/room-in-the-joint': {
    story:
      'Tile goes down on ridges from a {notch} trowel, the joints are {joint}, and the neighbours are already set. The tile is dropped in its place.',
    ask: 'Can it be moved far enough where it lies? And why?',
    yes: 'Yes',
    no: 'No, lay it off its place and slide it in',
    room: 'The joint of {joint} gives the {need} it must travel',
    'no-room': 'The joint of {joint} is less than the {need} it must travel',
    pressed: 'It need not travel, only be pressed',
    plenty: '{notch} leaves so much mortar that travel doesn’t matter',
    'why-room': 'It must travel the width of the notch, {width}, and has {joint}.',
    'why-none':
      'It must travel the width of the notch, {width}, and has only {joint}. Start it off its place and slide it home, use a notch that collapses by itself, or coat the back.',
  },
};
