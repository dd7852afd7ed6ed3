/** What the judge says, in English. */
export const words = {
  pass: 'These tiles pass; {tiles} good ones still leave up to {bad} of a large floor possibly bad (19 chances in 20).',
  failAverage: 'These tiles fail: {found} of the back on average, and {required} is the least.',
  failSingle: 'A tile already fails by itself, however many more are lifted: {why}',
  fewPass: 'Not enough to judge: {tiles} lifted, and at least {least} are. Nothing seen so far fails.',
  soundOnly: 'Sound alone decides nothing: lift at least {least} tiles where it sounds worst, and look.',
  hollowOver:
    'A hollow sound over a membrane, board, mat or wood floor is common over a sound bed: lift before judging.',
  poorest: 'The average hides a tile of {found}, under the {required} to reach: look at how that one was set.',
  backCoat: 'The coat on the back of tile {n} never met the bed: no contact counts there.',
  hollowButFull:
    'The floor sounds hollow and the lifted tiles are well bedded: the sound comes from what lies under them.',
  notOnlyCoverage:
    'Some fully bedded tiles came loose too: coverage is not the only cause; check the board’s fasteners and seams, deflection and moisture.',
  limits: {
    coverage: 'Average coverage {found}, at least {required}.',
    'edge-support':
      'Largest bare place at an edge or corner {found}, at most {required}: every edge and corner is supported.',
    'largest-void': 'Largest void {found}, at most {required}.',
    'void-near-corner': 'Nearest void to a corner {found}, at least {required} away.',
    'void-near-edge': 'Nearest void to an edge {found}, at least {required} away.',
    'tiles-lifted': '{found} lifted, at least {required}.',
    'bed-least': 'Bed {found}, at least {required}.',
    'bed-most': 'Bed {found}, at most {required}.',
  },
  none: 'none',
  causes: {
    'wet-back': [
      'Only the cut tiles came up clean: the saw’s water kept the mortar off, not the notch.',
      'Dry each cut tile’s back before it is set.',
    ],
    powder: [
      'Powder on the back kept the mortar off.',
      'Wipe the backs with a damp sponge and let them dry, then set.',
    ],
    skinned: [
      'The mortar had skinned, or the base drank its water, before the tile came down.',
      'Spread less ahead, touch the ridges before each tile, dampen a thirsty base, collapse the ridges and lift to check. Levelling clips add no bond.',
    ],
    'not-embedded': [
      'The ridges still stand: the tile was laid on them and not worked in.',
      'Press and move each tile across the ridges by the width of the notch, then lift one to see.',
    ],
    'sealed-base': [
      'The mortar came up with the tile and left the slab clean: the base was sealed or dirty; coverage is not the cause.',
      'Put drops of water on the bare slab; where they stand, grind or blast it, the dust caught, before setting again.',
    ],
    'thirsty-base': [
      'A dry, porous base drew the water out of the bed.',
      'Dampen the base, or prime it as its maker says, with no water standing.',
    ],
    dabs: ['The tile was set on dabs: most of its back is bare.', 'Take it up, and set it in a combed bed.'],
    swirls: [
      'Swirled ridges closed the lanes and kept the air in.',
      'Comb straight, one way, and move the tile across the ridges.',
    ],
    'too-little-mortar': [
      'The ridges are crushed flat and the back is still bare in places: there was too little mortar for this tile on this floor.',
      'Take a deeper notch, hold the blade steeper, butter the back, or flatten the floor first.',
    ],
    'unbedded-board': [
      'A straight crack over a seam: the board was not bedded, fastened or taped as it must be.',
      'Bed boards in mortar, fasten them, and tape the seams.',
    ],
    'other-causes': [
      'The bed is full and the tile came loose all the same: coverage is not the cause.',
      'Look at the board’s fasteners and seams, at deflection, at movement joints and at moisture.',
    ],
  },
} as const;
