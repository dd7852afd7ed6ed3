import type { Words } from '../../engine/say.ts';

export const whatTheRidgesAreFor: Record<string, Words> = {
  'what-the-ridges-are-for/first-touch': {
    story:
      'A helper lays a tile on fresh square ridges and leaves it: no shove, no movement. The ridges only just touch.',
    width: 'Gap between teeth',
    depth: 'Depth of the notch',
    tooth: 'Width of a tooth',
    ask: 'How much of the back does the mortar touch?',
    picture: 'Ridges {width} wide with lanes {tooth} wide between them.',
    why: 'Only the tops touch: {width} of every {pitch}, {share}. The depth has no say in it until the ridges are crushed.',
  },
  'what-the-ridges-are-for/way-out-for-air': {
    story: 'One {tile} tile lies with its long side {long}. The ridges under it run {ridges}, straight.',
    ask: 'Air sits in a lane under the middle of the tile. How far is it to the nearest open end of that lane?',
    none: 'nowhere to go: ridges only trap it',
    why: 'The lane is {side} long and the middle is half of it: {half}.',
    'why-long': 'Turned the other way the air would have only {other} to go.',
    'why-short': 'Along the long side it would have had {other} to go.',
    'picture-long': 'The tile over ridges that run along its long side.',
    'picture-short': 'The tile over ridges that run along its short side.',
  },
  'what-the-ridges-are-for/move-which-way': {
    story: 'You combed straight ridges that run {ridges}, and set one {tile} tile on them.',
    ask: 'How do you bed it?',
    move: 'Press and move it back and forth, {way}',
    press: 'Press hard in the middle, with your whole weight, and leave it where it lies, unmoved',
    circles: 'Press and work it round and round, wider and wider, until it no longer gives any more',
    why: 'Moved {across}, the tile drags each ridge over into the next lane and the air goes out along the lanes. Moved along the ridges it only rides on them.',
  },
  'what-the-ridges-are-for/where-the-air-was': {
    story:
      'A {tile} tile, pulled from a bed that was combed in swirls with a {notch} trowel and worked well. Grey is mortar.',
    ask: 'Where was the largest bubble of air shut in? Mark a square that holds part of it.',
    picture: 'The back of the tile, ruled into squares. Grey: mortar. The rest: bare tile.',
    why: 'The largest bare patch that nothing leads out of is {area}, in {cells}. The swirl closed its own lane there, and the air could only be squeezed smaller.',
  },
};
