import type { Words } from '../../engine/say.ts';

export const underBoardsAndMembranes: Record<string, Words> = {
  'under-boards-and-membranes/two-layers': {
    story:
      'Cement board goes on a wood floor in a bed combed with a {boardNotch} trowel. The tile on it is set with a {tileNotch} trowel.',
    board: 'Rate under the board',
    tile: 'Rate under the tile',
    ask: 'How much floor does a bag cover, both layers together?',
    'tile-layer': 'Tile',
    bed: 'Mortar',
    'board-layer': 'Cement board',
    'bed-board': 'Mortar',
    floor: 'Wood floor',
    picture: 'From the top: tile, mortar, cement board, mortar, wood floor.',
    why: 'Each square takes both layers, so what the two take is added, not what they cover: {value}.',
  },
  'under-boards-and-membranes/mat-cavities': {
    story: 'An uncoupling mat over {area}. Its cavities are filled with the flat side before you comb.',
    depth: 'Depth of the cavities',
    hollow: 'Share of the mat that is hollow',
    full: 'A layer that deep over the whole floor',
    ask: 'How much mortar do the cavities take?',
    why: '{share} of that layer is cavity: {value}. No headline on a bag counts it.',
  },
  'under-boards-and-membranes/whose-word': {
    story:
      'A thin sheet membrane is bonded to a slab. The chart in the shop says {chart} for the tile that will go on top.',
    told: 'The membrane’s sheet says: bond it with a {notch} trowel.',
    silent: 'The membrane’s sheet says nothing about a notch.',
    ask: 'What do you comb with under the membrane?',
    safe: '{notch}, to be on the safe side',
    other: 'The sheet of another membrane in the van says {notch}.',
    'why-told': 'The maker of the membrane governs what goes under it: {notch}. The chart speaks of tile.',
    maker: 'Nothing yet: ask its maker first',
    'why-silent':
      'Neither a tile’s chart nor another maker’s sheet speaks of this membrane. Ask its maker, and write the answer down.',
  },
  'under-boards-and-membranes/comb-over-cable': {
    story: 'Heating cable lies on the floor, its runs go {cable}. The {tile} tile will lie with its long side {along}.',
    ask: 'How do you comb over it?',
    plastic: 'Straight, {way}, with a plastic trowel',
    steel: 'Straight, {way}, with the steel trowel',
    swirl: 'In circles, so that it closes round the cable',
    why: 'Along the runs, {cable}: across them every tooth rides up on the cable, and steel can cut it.',
    caution: 'Measure the cable after embedding. Connecting it is work for a licensed electrician.',
  },
  'under-boards-and-membranes/cable-resistance': {
    story: 'The label of a heating cable says {label} Ω. You measure {found} Ω, {when}.',
    fixed: 'after fixing it to the floor',
    embedded: 'after embedding it',
    ask: 'Go on? And why?',
    yes: 'Go on',
    no: 'Stop and find out',
    inside: 'It is within {limit} of the label',
    outside: 'It is more than {limit} off the label',
    warm: 'The reading only matters once it is warm',
    why: 'Within {limit} of the label means {low} to {high} Ω. Write every reading down.',
    caution: 'A cable that reads wrong is not tiled over; ask the maker and a licensed electrician.',
  },
  'under-boards-and-membranes/above-and-below': {
    story:
      'A thin sheet membrane goes on a slab, then tile. The membrane’s sheet says {below} under the membrane. For the tile on top you need the bed of a {above} trowel.',
    'ask-below': 'What do you comb with under the membrane?',
    'ask-above': 'What do you comb with on top of it?',
    safe: '{notch}, to be on the safe side',
    flat: 'Nothing, the flat side is enough',
    'why-below': 'Under the membrane its maker governs: {below}.',
    'why-above': 'On top the tile decides, as on any flat floor: {above}.',
  },
};
