import type { Words } from '../../engine/say.ts';

export const flatFirst: Record<string, Words> = {
  'flat-first/flat-enough': {
    story: '{tile} tile is to go on a slab. Under a straightedge of {over} you find a gap of {found}.',
    ask: 'Flat enough to set on? And why?',
    yes: 'Set on it',
    no: 'Flatten it first',
    under: 'It is within {limit} in {over}',
    over: 'It is over {limit} in {over}',
    mortar: 'The mortar makes up the rest',
    'why-large': 'Under tile with an edge of {edge} and more the limit over that span is {limit}.',
    'why-small': 'Under smaller tile the limit over {over} is {limit}.',
    'why-first': 'Grind or fill before you comb; the mortar is no leveller.',
  },
  'flat-first/which-limit': {
    story: 'You walk a floor before pricing it. {tile} tile is going down.',
    ask: 'How flat must it be before you comb?',
    within: 'Within {dip} in {over}',
    mortar: 'As it is; the bed takes it up',
    bigger: 'Any floor, with a big enough notch',
    'why-large': 'One edge has {edge} or more, so it is {dip} in {over}.',
    'why-small': 'All edges are under {edge}, so it is {dip} in {over}.',
  },
  'flat-first/bed-over-a-dip': {
    story:
      'You comb with a {notch} trowel at {angle}°; elsewhere that comes to a bed of {bed}. In one place the slab dips {dip}, and a helper wants to fill it with the same mortar, so that the tiles come out level.',
    ask: 'How thick would the bed be over the dip?',
    why: '{bed} and {dip} make {sum}. Thick next to thin shrinks unevenly and draws the tile down: patch the dip first.',
  },
  'flat-first/bed-within-its-mortar': {
    story: 'The bed comes to {bed}. One place is {dip} low and has not been patched. The mortar is {kind}.',
    'thin-set': 'ordinary thin-set',
    'large-and-heavy': 'large-and-heavy-tile mortar',
    ask: 'If it were filled with this mortar, would the bed stay within that mortar’s limit?',
    yes: 'It would',
    no: 'It would not',
    under: '{sum} in all, within {limit}',
    over: '{sum} in all, over {limit}',
    fills: 'Mortar fills whatever it meets',
    notch: 'It depends on the notch alone',
    why: '{sum} in all; {kind} may be up to {limit} thick.',
    'why-patch':
      'Inside the limit or not, the mortar is not what makes a floor flat: patch first and set in an even bed.',
  },
  'flat-first/stop-the-job': {
    'story-dip':
      '{tile} tile is to go on a slab this morning. Under a bar of {over} one place is {dip} low. The bucket is mixed and the helper has the trowel in his hand.',
    'story-contact':
      'Half of a shower wall is set in {tile} tile. Three were lifted: {shares} bonded. The backs had been coated, and all of them sound alike.',
    'story-offset':
      '{tile} tile lies ready for a hall. The drawing shifts each row by {shift}. There is no mock-up, and the bow was measured well inside its standard.',
    ask: 'What do you say?',
    'mend-dip': 'Stop, and patch the low place first',
    'mend-contact': 'Stop, too little of each back is bonded',
    'mend-offset': 'Stop, shift the rows by a third at most',
    mortar: 'Go on, the bed takes up the difference',
    notch: 'Go on with the next bigger notch',
    chart: 'Go on, the chart has a notch for this tile',
    most: 'Go on, taken all together it is good',
    eighty: 'Go on, it is all over {eighty}',
    coat: 'Go on, with the coat every back is full',
    tap: 'Go on, none of them rings hollow',
    half: 'Go on, half always looks right',
    allowed: 'Go on, the standard allows them their bow',
    push: 'Go on, a firm push takes out any lip',
    'why-dip':
      'Under this tile {allowed} in {over} is the most. A bed thick in one place shrinks more there; patch, let it cure, then set.',
    'why-contact':
      'On average {mean}; in a shower {asked} is asked. A coat that met no bed and a solid sound don’t add to it.',
    'why-offset':
      'Tile this long is shifted by a third at most unless a mock-up was approved: at half, crown meets low ends.',
  },
  'flat-first/where-to-work': {
    story:
      'A slab for large tile, read under a straightedge of {over}. Each square shows how far it is above (+) or below (−) the line. The limit is {limit}.',
    'ask-fill': 'Which square is filled?',
    'ask-grind': 'Which square is ground?',
    picture: 'Readings square by square, {unit}.',
    'picture-long': '{readings}.',
    'why-fill': '{cell} is {height}, further below than the limit. Patch goes there.',
    'why-grind':
      '{cell} is {height}, further above than the limit. It is ground down, with a vacuum or water on the dust.',
  },
};
