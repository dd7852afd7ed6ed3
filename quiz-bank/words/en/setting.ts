import type { Words } from '../../engine/say.ts';

export const setting: Record<string, Words> = {
  'setting/how-far': {
    story: 'You combed with a {notch} trowel. The tile lies on its ridges.',
    ask: 'How far must it travel across the ridges, there and back, so that each ridge fills the lane beside it?',
    why: 'A ridge is {width} wide and so is the lane beside it: it has to be dragged over its own width.',
    views:
      'Sources differ: a contractors’ manual is content with {from} to {to}. With a wide notch that leaves lines of voids.',
  },
  'setting/one-stroke': {
    story: 'A porcelain tile rests on the ridges of a {notch} trowel, combed at {angle}°. Nobody leans on it.',
    'moved-across': 'You move it once, {stroke} across the ridges.',
    'moved-along': 'You move it once, {stroke} along the ridges.',
    pitch: 'From ridge to ridge',
    rests: 'Coverage as it rests',
    ask: 'About how much coverage does that one stroke add?',
    points: '{points} points',
    nothing: 'None: only a push adds any',
    all: '{points}: one stroke fills the lanes',
    'why-across':
      'Across, each ridge is dragged out by up to the {stroke} that the tile moves, less what slips under it: {across}. Along, the same stroke would have added {along}.',
    'why-along':
      'Along its own ridges the tile mostly slides on their tops: {along}. Across, the same stroke would have added {across}.',
    'why-model': 'Figures of a model, for mortar that holds a ridge.',
  },
  'setting/put-it-right': {
    'parked-0':
      'You lift the first {tile} tile of the morning. Straight stripes on its back, as far apart as the teeth, and open lanes between them. The mortar is wet and new.',
    'parked-1':
      'A {tile} tile was set down and left. It comes up with one wet stripe for each ridge, straight and even; the floor between them is bare.',
    'swirled-0':
      'You lift the first {tile} tile. It was moved well. The ridges under it run in arcs, and round patches of its back are bare, each closed on every side. The mortar is wet and new.',
    'swirled-1':
      'A helper combs in loops and works each {tile} tile well. The one you lift has bare eyes all over its back. The mortar is wet and new.',
    'skinned-0':
      'The last {tile} tile of a long straight stretch comes up with a clean back. You touch the next ridge: no mortar on the finger. What is in the bucket is soft and new.',
    'skinned-1':
      'Straight ridges wait for the next {tile} tile. A fingertip comes away from them clean. The mortar in the bucket is new and soft.',
    'stiff-0':
      'For {tile} tile you mixed a batch {age} ago; the bag gives it {pot}. It drags and tears behind the teeth, and a tile lifted at once is hardly wet.',
    'stiff-1':
      'The mortar crumbles as you comb for {tile} tile. It was mixed {age} ago. Its pot life on the bag is {pot}.',
    ask: 'What puts it right?',
    move: 'Press and move it across the ridges',
    straight: 'Scrape off and comb straight, one way',
    fresh: 'Scrape off and comb again from the bucket',
    mix: 'Throw the batch away and mix anew',
    press: 'Press every tile down with more weight',
    bigger: 'Take the next bigger notch, for more mortar',
    along: 'Push it back and forth along the ridges',
    coat: 'Coat the backs, then they are covered',
    rest: 'Nothing: the rest of the back makes up',
    swirl: 'Comb in half circles, that spreads it',
    water: 'Loosen the mortar with a splash of water',
    looks: 'Nothing: to look at, the mortar is good',
    'why-parked':
      'There is mortar enough and it is wet. Nobody drove the ridges into the lanes: press, and move across.',
    'why-swirled':
      'Arcs close on themselves and keep their air, however well the tile is worked. Straight ridges let it out.',
    'why-skinned':
      'The ridges have a skin and wet nothing any more. What is in the bucket is still good: scrape off, comb again.',
    'why-stiff': 'The batch is past its time and has begun to set. Neither water nor weight brings it back.',
  },
  'setting/room-in-the-joint': {
    story:
      'Tile goes down on ridges from a {notch} trowel, the joints are {joint}, and the neighbours are already set. The tile is dropped in its place.',
    ask: 'Can it be moved far enough where it lies? And why?',
    yes: 'Yes',
    no: 'No, lay it off its place and slide it in',
    room: 'The joint is as wide as the notch, or wider',
    'no-room': 'The joint is narrower than the notch is wide',
    deep: 'The joint is as wide as the notch is deep, or wider',
    'not-deep': 'The joint is narrower than the notch is deep',
    pressed: 'It need not travel, only be pressed',
    plenty: 'That notch leaves so much mortar that travel doesn’t matter',
    'why-room': 'It must travel the width of the notch, {width}, and has {joint}.',
    'why-none':
      'It must travel the width of the notch, {width}, and has only {joint}. Start it off its place and slide it home, use a notch that collapses by itself, or coat the back.',
  },
  'setting/what-it-comes-to': {
    story: 'A {tile} tile on straight ridges from a {notch} trowel, held at {angle}°.',
    'way-press': 'It is pressed down evenly and not moved.',
    'way-along': 'It is pressed down and pushed once, {push}, along the ridges.',
    'way-across': 'It is pressed down and pushed once, {push}, across the ridges.',
    'way-worked': 'It is pressed down and moved across the ridges, there and back, twice.',
    ask: 'These are the coverages the model finds for four ways to set it on this bed. Which belongs to this one?',
    'why-press': 'Pressed only: {share}.',
    'why-along': 'One push along: {share}.',
    'why-across': 'One push across: {share}.',
    'why-worked': 'There and back across, twice: {share}.',
    picture: 'The back of that tile, {share} covered.',
  },
  'setting/stripes-on-the-back': {
    story:
      'You comb with a {notch} trowel and set {tile} tile. After the first one you lift it and look. Grey is mortar.',
    ask: 'What do you change for the next?',
    picture: 'The back of the lifted tile.',
    'seen-same': 'Mortar all over. ',
    'seen-straight': 'Curved and round bare patches. ',
    'seen-move': 'Straight stripes of mortar with bare stripes between. ',
    same: 'Nothing, go on',
    straight: 'Comb straight, one way',
    move: 'Move it further across the ridges',
    bigger: 'Take the next bigger notch, for more mortar',
    harder: 'Press harder in the middle',
    'why-same': '{share} covered: go on, and lift another in a while.',
    'why-straight': 'The bare patches are curved and closed: swirls shut the air in. {share} covered.',
    'why-move':
      'Straight bare stripes between straight ridges: the mortar is there and was not driven over. {share} covered.',
  },
};
