import type { Words } from '../../engine/say.ts';

const causes: Words = {
  'cause-skinned': 'The bed had skinned before the tile came',
  'cause-not-moved': 'The tile was set down and never moved',
  'cause-sealed-slab': 'The slab’s pores are sealed',
  'cause-wet-back': 'The cut tiles went on wet from the saw',
  'cause-powder': 'Release powder was left on the backs',
  'cause-thirsty-slab': 'The dry slab drank the mortar’s water',
  'cause-dabs': 'The tile was set on dabs',
  'cause-board-seam': 'The board under it works at its seam',
  'cause-thick-patch': 'Mortar was used to fill a dip',
  'cause-notch-too-small': 'The notch was too small for that tile',
};

export const findingTheCause: Record<string, Words> = {
  'finding-the-cause/read-the-signs': {
    ...causes,
    ask: 'What is the likely cause?',
    'signs-skinned-0':
      'The ridges under the tile are crushed a little, with a hard, smooth film on them. The back is clean. The mortar sits tight on the slab. Only tiles at the end of each spread are loose.',
    'signs-skinned-1':
      'Loose tiles lie in rows, the last ones of every combed strip. Their backs are clean; the crests of the mortar below shine and are hard.',
    'signs-not-moved-0':
      'Straight ridges stand on the slab as high as they were combed, with a bright line on each crest. The back shows thin stripes of mortar, all tiles alike.',
    'signs-not-moved-1':
      'Every tile lifted has stripes on its back, as far apart as the teeth, and the lanes between them are open from edge to edge. The ridges are hardly lower than when combed.',
    'signs-sealed-slab-0':
      'All the mortar came up with the tile, full and even. The slab below is clean as if nothing had ever been on it.',
    'signs-sealed-slab-1':
      'The bed is full and sticks to the tile everywhere. It let go of the concrete cleanly, over the whole room.',
    'signs-wet-back-0':
      'Only cut tiles along the walls are loose. Their backs are spotless. The full tiles beside them hold.',
    'signs-wet-back-1': 'The field is sound. Cuts at the edges came off with backs as clean as new, over a full bed.',
    'signs-powder-0':
      'Backs come off clean over a full bed, cut and uncut alike. A finger across any back from the box is white.',
    'signs-powder-1':
      'The bed is full and shows the print of the back. Nothing sticks to the tiles, and tiles from the box leave dust on your sleeve.',
    'signs-thirsty-slab-0':
      'The ridges stand, pale and crumbly, and rub to sand between the fingers. Little on the back, little on the slab. The spread was small and the tile came quickly.',
    'signs-thirsty-slab-1':
      'The mortar rubs off like dry sand from slab and tile. The tiles were set at once after combing, on an old, dusty dry slab.',
    'signs-dabs-0':
      'Five round lumps on the back, one in each corner and one in the middle. Between them nothing. The tile broke under a table leg.',
    'signs-dabs-1': 'A lifted tile shows round pats of mortar with wide bare back between them.',
    'signs-board-seam-0':
      'One straight crack runs through tile and joint alike, dead over a joint of the board below. Elsewhere the floor holds.',
    'signs-board-seam-1':
      'A crack, straight as a line across nine tiles. Under it the cement board shows an open joint and screws without mortar.',
    'signs-thick-patch-0':
      'A few tiles have sunk below their neighbours, months after. Under them the bed is three times as thick as elsewhere, and full.',
    'signs-thick-patch-1':
      'Lips have appeared round one spot that were not there in the first week. The bed there is full and very thick.',
    'signs-notch-too-small-0':
      'Backs are bonded all round the rim and bare in the middle. The tile is bowed, the ridges are crushed flat, and the bed is thin everywhere.',
    'signs-notch-too-small-1':
      'The ridges are gone, moved and crushed as they should be, wet when the tile came. In the hollow of the back no mortar ever arrived: there wasn’t enough.',
    'why-skinned':
      'A film on the crests and clean backs at the end of each spread: the mortar was too old there. Spread less, touch the ridges.',
    'why-not-moved':
      'Ridges at full height and stripes on every back: there was enough mortar and nobody drove it across.',
    'why-sealed-slab':
      'The mortar stayed with the tile and left the slab. Drops of water that stand on the slab show that it is sealed.',
    'why-wet-back': 'Only the cuts are clean: saw water on a dense back keeps the mortar off. Dry them first.',
    'why-powder': 'Clean backs, cut or not, and powder in the box: wipe it off before setting.',
    'why-thirsty-slab': 'Mortar that rubs to sand never had its water. Dampen the slab, or prime it as the maker says.',
    'why-dabs': 'Lumps are no bed.',
    'why-board-seam': 'Straight and over a seam: the board moves. No notch mends that.',
    'why-thick-patch': 'Thick mortar shrinks and draws the tile down. The dip should have been patched first.',
    'why-notch-too-small':
      'Wet, moved, crushed, and still bare in the hollow: here it was the amount. More bed, or a coat on the back.',
  },
  'finding-the-cause/test-that-settles-it': {
    ask: 'What do you do to find out?',
    'suspect-skinned-0': 'The floor is being set as you arrive. Tiles at the end of each strip worry you.',
    'suspect-skinned-1': 'The helper combs a long way ahead. You suspect the far end is no longer good.',
    'suspect-sealed-slab-0': 'Before a job on a new slab you wonder whether it was sprayed with a curing compound.',
    'suspect-sealed-slab-1': 'Mortar came off a slab cleanly on the last job here. You suspect a sealer.',
    'suspect-wet-back-0': 'A few loose tiles along a wall. You wonder whether it is only the cuts.',
    'suspect-wet-back-1': 'Loose tiles round a column. Somebody set straight from the wet saw, you think.',
    'suspect-powder-0': 'The backs from this box feel slippery. You suspect release powder.',
    'suspect-powder-1': 'Mortar doesn’t want to stick to these backs. You suspect something on them.',
    'suspect-board-seam-0': 'A straight crack through nine tiles. You suspect the board.',
    'suspect-board-seam-1': 'A crack, straight as a ruler, has come back after regrouting. You suspect what is below.',
    'suspect-not-moved-0': 'The crew sets fast and hardly moves the tile. You wonder what the backs look like.',
    'suspect-not-moved-1': 'Someone only presses the tiles down. The mortar is fresh. You want to see what it does.',
    'test-skinned': 'Touch the ridges at the far end of the strip',
    'test-sealed-slab': 'Let drops of water stand on the slab',
    'test-wet-back': 'Compare lifted cuts with lifted full tiles',
    'test-powder': 'Wipe a back from the box with a dark cloth',
    'test-board-seam': 'Measure where the board’s joints lie and compare',
    'test-not-moved': 'Lift a tile now and look at its back',
    tap: 'Tap every tile with a rod and mark the hollow ones',
    notch: 'Try the next bigger notch and see',
    'why-skinned': 'The finger tells in a second whether the bed still wets.',
    'why-sealed-slab': 'Water that stands for minutes can’t get in, and neither can mortar.',
    'why-wet-back': 'If full tiles hold and cuts don’t, it is the backs of the cuts.',
    'why-powder': 'A dark cloth shows it at once.',
    'why-board-seam': 'A crack that follows a seam of the board tells where it comes from.',
    'why-not-moved':
      'The back of a tile lifted while the mortar is fresh shows stripes or a full bed, and the tile can go back.',
  },
  'finding-the-cause/what-to-do-next-time': {
    ask: 'What does the crew change?',
    'found-skinned': 'Only the last tiles of each strip are loose, clean backs over shiny crests.',
    'found-not-moved': 'Stripes on every back, ridges at full height, mortar that was fresh.',
    'found-sealed-slab': 'The whole bed came up with the tile and left a clean slab.',
    'found-wet-back': 'Cut tiles came off spotless, full tiles hold.',
    'found-powder': 'Backs come off clean over a full bed, and tiles from the box leave white on the hand.',
    'found-thirsty-slab': 'Mortar that rubs off like sand, set quickly on an old dry slab.',
    'found-dabs': 'Round pats on the backs and bare tile between.',
    'found-board-seam': 'A straight crack over a seam of a board that was screwed down dry.',
    'found-thick-patch': 'Tiles sunk over one spot where the bed is thick.',
    clips: 'Levelling clips were used throughout; all edges are flush.',
    'no-clips': 'The edges are flush.',
    'do-skinned': 'Comb for fewer tiles and touch the ridges',
    'do-not-moved': 'Move every tile across its ridges',
    'do-sealed-slab': 'Open the slab by grinding before tile',
    'do-wet-back': 'Dry the cuts before they are set',
    'do-powder': 'Wipe every back before it is set',
    'do-thirsty-slab': 'Dampen the slab before combing',
    'do-dabs': 'Comb a full bed',
    'do-board-seam': 'Bed the board in mortar and tape its seams',
    'do-thick-patch': 'Patch the low spots first',
    'do-notch': 'Take a bigger notch, for mortar to spare',
    'do-tap': 'Tap every tile and redo the hollow ones',
    'do-press': 'Press every tile down harder than they did',
    'why-skinned': 'The mortar was good until it got old on the floor.',
    'why-not-moved': 'Enough mortar, fresh, and left standing: it wants movement.',
    'why-sealed-slab': 'The slab let go, not the tile. Grind it with a vacuum on the shroud: the dust is silica.',
    'why-wet-back': 'Water on the back of the cuts kept the mortar off.',
    'why-powder': 'Powder keeps the mortar off every back in the box.',
    'why-thirsty-slab': 'The slab took the water that the mortar needed to set.',
    'why-dabs': 'Dabs leave most of the tile in the air.',
    'why-board-seam': 'A board laid dry moves at its seams and takes the tile along.',
    'why-thick-patch': 'Thick mortar shrank and took the tiles down.',
    'why-clips': 'Clips bring edges level. They add no bond.',
  },
  'finding-the-cause/loose-kitchen': {
    story:
      'Half a kitchen floor is loose after {months} months. Porcelain on cement board on a wood floor. You write down what you find.',
    ask: 'Which of these can have had a part in it?',
    'seams-bad': 'Board seams not taped',
    'seams-good': 'Board seams taped and filled',
    'fasteners-bad': 'Roofing nails in half of the board',
    'fasteners-good': 'Board screws close together, and mortar under the board',
    'comb-bad': 'Swirls in the mortar under every lifted tile',
    'comb-good': 'Straight ridges, crushed flat',
    'contact-bad': 'Backs under half bonded',
    'contact-good': 'Backs nearly full on every tile lifted',
    'span-bad': 'Joists too far apart for their depth',
    'span-good': 'Joists well inside their span',
    'damp-bad': 'A damp crawl space, boards cupped by water',
    'damp-good': 'A dry, vented crawl space',
    hollow: 'The loose tiles sound hollow',
    'why-seams': 'Open seams let the board work.',
    'why-fasteners': 'Nails let the board move up and down.',
    'why-comb': 'Swirls trap air and cost contact.',
    'why-contact': 'Less than half is far under what a dry floor asks.',
    'why-span': 'A floor that bends breaks the bond, whatever the bed.',
    'why-damp': 'Wood that swells and shrinks shears the mortar.',
    'why-hollow': 'The sound is a sign and no cause.',
  },
};
