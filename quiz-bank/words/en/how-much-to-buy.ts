import type { Words } from '../../engine/say.ts';

export const howMuchToBuy: Record<string, Words> = {
  'how-much-to-buy/bags-for-a-floor': {
    story:
      'A floor of {area}, set with a {notch} trowel. You look at the bag, and at what your crew used on its last jobs.',
    headline: 'The bag’s headline',
    yours: 'What your crew really gets',
    waste: 'Waste you plan for',
    ask: 'How many bags do you buy?',
    why: 'At your own rate with waste it comes to {exact} bags: {value}, rounded up.',
  },
  'how-much-to-buy/enough-on-the-truck': {
    story:
      'A floor of {area} is to be set with a {notch} trowel. {onTruck} on the truck. Published rates for that notch, ideal floor and no waste:',
    from: 'From',
    to: 'To',
    ask: 'Will it do, before waste? And why?',
    yes: 'It will do',
    no: 'It won’t',
    covers: 'Even at the leaner rate it is enough',
    short: 'Even at the kinder rate it is too little',
    headline: 'The headline on the bag is what one goes by',
    depth: 'The depth of the notch over the whole floor is what it takes',
    'bag-1': 'One bag is',
    'bags-many': '{bags} bags are',
    why: 'The rates make {low} to {high} bags, and you have {bags}. Waste comes on top.',
    'why-same': 'Either rate makes {high} bags, and you have {bags}. Waste comes on top.',
  },
  'how-much-to-buy/powder-from-the-bed': {
    story: '{area} of floor, combed with a {notch} trowel at {angle}°.',
    bed: 'Bed that comb leaves',
    rate: 'Powder for a full layer {step} thick on that floor',
    ask: 'How much powder does the bed take?',
    why: 'A bed of {bed} takes {value}. The depth of the notch is not the bed.',
  },
  'how-much-to-buy/coat-in-the-count': {
    story: 'The bed alone comes to {bags} bags for the whole floor. Every back will be coated.',
    coat: 'A back coat adds, of the bed',
    waste: 'Waste on everything',
    ask: 'How many bags do you buy?',
    why: '{bags} bags and {coat} for the coats, and {waste} waste on the lot: {exact}, so {value}.',
  },
  'how-much-to-buy/tiles-on-a-floor': {
    story: 'A floor of {area} in {tile} tile, joints left out of the count. {hollow} tiles sound hollow.',
    ask: 'What share of the tiles is that?',
    why: 'There are about {tiles} tiles, so {hollow} are {share}. That says where to lift, not what is wrong.',
  },
  'how-much-to-buy/which-takes-most': {
    story: 'Four floors of the same size. Count every layer that takes mortar.',
    ask: 'Put them in order by the mortar they take.',
    least: 'least',
    most: 'most',
    none: 'Straight on the slab',
    'backer-board': 'Cement board over wood',
    'uncoupling-mat': 'Uncoupling mat',
    'heated-mat': 'Heated mat',
    'sheet-waterproofing': 'Bonded sheet membrane',
    plain: '{membrane}, tile bed with {notch}',
    coated: '{membrane}, tile bed with {notch}, backs coated',
    why: 'Bed under board or sheet, cavities, cover over cable and coats count as much as the tile’s own bed. Spread over the floor, all layers together come to:',
    'why-each': '{membrane}, {notch}: {litres}.',
  },
};
