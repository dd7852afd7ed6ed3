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
  'flat-first/where-to-work': {
    story:
      'A slab for large tile, read under a straightedge of {over}. Each square shows how far it is above (+) or below (−) the line. The limit is {limit}.',
    'ask-fill': 'Which square is filled?',
    'ask-grind': 'Which square is ground?',
    picture: 'Readings square by square, {unit}.',
    'picture-long': '{readings}.',
    'why-fill': '{cell} is {height}, further below than the limit. Patch goes there.',
    'why-grind': '{cell} is {height}, further above than the limit. It is ground down.',
  },
};
