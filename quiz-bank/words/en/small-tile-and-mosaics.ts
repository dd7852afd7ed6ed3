import type { Words } from '../../engine/say.ts';

export const smallTileAndMosaics: Record<string, Words> = {
  'small-tile-and-mosaics/squeeze-up': {
    story:
      'Sheets of {piece} squares, {thick} thick, with joints of {joint}. You comb with a {notch} trowel at {angle}° and beat the sheets in until the bed is as thin as it may be.',
    bed: 'Mortar combed, spread even',
    least: 'Bed after beating in',
    room: 'Most it may rise in the joint',
    factor: 'Rise in the joints over what the bed gives up (floor area over joint area)',
    ask: 'Do the joints stay open enough for grout? And why?',
    yes: 'They do',
    no: 'They don’t',
    under: 'It rises {rise}, within {room}',
    over: 'It rises {rise}, more than {room}',
    more: 'More mortar only beds it better',
    vee: 'It would take a V notch of the same size to keep them open',
    why: 'The bed gives up {over}, and all of it goes up the joints: {rise}, where {room} is the most.',
  },
  'small-tile-and-mosaics/knocked-flat': {
    story:
      'For mosaic you comb with a {notch} trowel; the ridges stand {height}. Then you draw the flat side over them and level them out.',
    width: 'Width of a ridge at its foot',
    tooth: 'Lane between two ridges',
    'tooth-none': 'none, the feet meet',
    ask: 'How thick is the level bed?',
    picture: 'Ridges in section, {height} high.',
    'why-square': 'The ridges of {height} share what they hold with the lanes: {bed}.',
    'why-v': 'A V ridge holds half of its height times its width, and the feet meet: half of {height}, {bed}.',
    'picture-why': 'The ridges and the bed they come to, {bed}.',
  },
  'small-tile-and-mosaics/vee-under-a-sheet': {
    story:
      'A shower wall in mosaic. To keep mortar out of the joints somebody chose a {notch} trowel and holds it at {angle}°. The ridges stay standing.',
    ask: 'Suppose the ridges went down all the way. Would the bed reach the {least} it needs?',
    yes: 'It would',
    no: 'It would not',
    over: 'Level, they would come to at least that',
    under: 'Level, they would come to less than that',
    square: 'They would come to what a square of that width leaves: enough',
    'square-less': 'They would come to what a square of that width leaves: less',
    eighty: '{share} contact is enough on a wall, so the bed doesn’t matter',
    picture: 'The blade of a {notch} trowel, to scale.',
    'picture-why': 'The ridges in section and the bed they would come to, {bed}.',
    why: 'All of it, level, is {bed}; a bed is at least {least}.',
    'why-tips':
      'And left standing, V ridges have touched only {low} to {high} of the back. Comb a square notch and level the ridges instead.',
  },
  'small-tile-and-mosaics/notch-for-a-sheet': {
    story: 'Mosaic sheets, {piece} squares {thick} thick with joints of {joint}, for {place}.',
    'story-glass': 'Glass mosaic, {piece} squares {thick} thick with joints of {joint}, for {place}.',
    'interior-dry': 'a kitchen wall that stays dry',
    'interior-wet': 'a shower wall',
    ask: 'How do you comb?',
    flat: '{notch}, ridges levelled first with the flat side',
    standing: '{notch}, ridges left standing and the sheet beaten in',
    why: '{notch} leaves the least bed with a blade one can keep, and not so much that the joints fill. {need} is asked here.',
    'why-glass': 'Glass shows every ridge, so they are levelled, in white mortar made for glass.',
    'why-flat':
      'Pieces this small can’t be moved one by one, and standing ridges leave lanes under them or come up in the joints: level them.',
    'why-standing':
      'Pieces of that size bridge enough ridges, and in the dry {need} is reached by beating in. Levelling does no harm, but is not needed.',
  },
  'small-tile-and-mosaics/glass-on-its-bed': {
    story: 'A glass tile is lifted. {share} of its back was bonded, and the mortar behind it is {bed} thick.',
    ask: 'Does it pass? And why?',
    bare: 'Too little of it is bonded for glass',
    thick: 'The mortar behind it is too thick',
    fine: 'It is bonded enough, and not too thick',
    eighty: 'It is glass on a dry wall, so {eighty} is what counts',
    'any-thick': 'Thick mortar only evens out the wall behind it',
    'why-bare': 'Glass asks for {need}: what isn’t bonded shows, and cracks.',
    'why-thick': 'Thick mortar shrinks and pulls on the glass until it cracks. {most} is the most.',
    'why-fine': '{share} is at least {need} and {bed} is within {most}.',
  },
};
