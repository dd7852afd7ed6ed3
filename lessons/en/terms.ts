import type { ModuleSlug } from '../course.ts';

/** A word of the trade: what it means in one or two sentences, and the module that explains it. No numbers here. */
export interface Term {
  term: string;
  says: string;
  module: ModuleSlug;
  /** Other words for the same thing. */
  also?: string[];
}

export const terms = {
  'adjust-time': {
    term: 'Adjusting time',
    says: 'How long a set tile may still be moved without hurting the bond.',
    module: 'time-and-weather',
  },
  'back-butter': {
    term: 'Back buttering',
    says: 'Spreading a coat of mortar on the back of the tile itself, as well as on the floor.',
    module: 'buttering-the-back',
    also: ['buttering'],
  },
  'back-relief': {
    term: 'Back relief',
    says: 'Ribs, grids or studs on the back of a tile. Mortar must fill them before it can bond the whole back.',
    module: 'buttering-the-back',
    also: ['ribs', 'keyed back'],
  },
  'backer-board': {
    term: 'Backer board',
    says: 'A cement or foam board fixed over a floor or wall to carry tile.',
    module: 'under-boards-and-membranes',
  },
  bed: {
    term: 'Bed',
    says: 'The layer of mortar between the tile and what carries it, after the ridges have collapsed.',
    module: 'what-the-ridges-are-for',
  },
  'bond-breaker': {
    term: 'Bond-breaker',
    says: 'A film on the tile or the floor that keeps mortar off: dust, release powder, saw water, sealer.',
    module: 'finding-the-cause',
  },
  bow: {
    term: 'Bow',
    says: 'A tile’s curve along one side: its middle stands above or below its ends.',
    module: 'bowed-tile',
    also: ['warp', 'cup'],
  },
  burn: {
    term: 'Burning in',
    says: 'Forcing a thin coat of mortar into the surface with the flat side of the trowel before combing.',
    module: 'combing',
    also: ['key coat', 'flat-trowelling'],
  },
  calibrated: {
    term: 'Calibrated tile',
    says: 'Tile sorted by size after firing, so that one box holds one size.',
    module: 'bowed-tile',
  },
  comb: {
    term: 'Combing',
    says: 'Drawing the notched side of the trowel through the mortar so that it stands in ridges.',
    module: 'combing',
  },
  consistency: {
    term: 'Consistency',
    says: 'How a mix behaves: whether it slumps, holds a ridge or stands stiff.',
    module: 'mixing',
  },
  coverage: {
    term: 'Coverage',
    says: 'The share of the tile’s back that is bonded, judged by lifting tiles.',
    module: 'what-the-ridges-are-for',
    also: ['contact'],
  },
  'dry-set': {
    term: 'Thin-set mortar',
    says: 'Cement mortar made to bond tile in a thin bed.',
    module: 'mixing',
    also: ['thin-set', 'dry-set mortar'],
  },
  embed: {
    term: 'Embedding',
    says: 'Bringing the tile down into the mortar by pressing, moving or vibrating until the ridges have collapsed.',
    module: 'setting',
  },
  'end-term': {
    term: 'Edge hold',
    says: 'What the free edge of a ridge adds to the force needed to squeeze it; it makes narrow ridges stiffer than their width suggests.',
    module: 'setting',
  },
  flatness: {
    term: 'Flatness',
    says: 'How far a surface strays from a straightedge laid on it. Not the same as level.',
    module: 'flat-first',
  },
  flattening: {
    term: 'Flattening the ridges',
    says: 'Knocking combed ridges down with the flat side of the trowel before laying small tile.',
    module: 'small-tile-and-mosaics',
  },
  'gauged-panel': {
    term: 'Gauged panel',
    says: 'A thin porcelain sheet of a square metre or more, made to a set thickness.',
    module: 'large-tile-and-panels',
    also: ['thin panel', 'slab'],
  },
  'heating-cable': {
    term: 'Heating cable',
    says: 'An electric cable laid under tile to warm the floor. Connected by a licensed electrician, never cut.',
    module: 'wet-outdoors-heated',
  },
  'hollow-sound': {
    term: 'Hollow sound',
    says: 'A drummy note when a tile is tapped. It says where to look, not what is there.',
    module: 'pulling-a-tile',
    also: ['drummy'],
  },
  joint: {
    term: 'Joint',
    says: 'The gap between two tiles that grout fills.',
    module: 'bowed-tile',
  },
  'large-heavy': {
    term: 'Large-and-heavy-tile mortar',
    says: 'Mortar made to hold heavy tile without sagging or shrinking much, in a thicker bed than ordinary thin-set.',
    module: 'large-tile-and-panels',
    also: ['LHT mortar'],
  },
  lippage: {
    term: 'Lippage',
    says: 'The step between the edges of two neighbouring tiles.',
    module: 'bowed-tile',
  },
  membrane: {
    term: 'Membrane',
    says: 'A sheet or coat under the tile that keeps water or cracks from passing.',
    module: 'under-boards-and-membranes',
  },
  mosaic: {
    term: 'Mosaic sheet',
    says: 'Small pieces of tile held together on a mesh or paper so that they are laid as one.',
    module: 'small-tile-and-mosaics',
  },
  'movement-joint': {
    term: 'Movement joint',
    says: 'A soft joint left so that tile and floor can grow and shrink without pushing each other.',
    module: 'wet-outdoors-heated',
  },
  notch: {
    term: 'Notch',
    says: 'The opening between two teeth of the trowel, named by shape, width and depth.',
    module: 'reading-a-notch',
  },
  offset: {
    term: 'Offset',
    says: 'How far one row of tile is shifted against the next, as a share of the tile’s length.',
    module: 'bowed-tile',
    also: ['running bond', 'stagger'],
  },
  'open-time': {
    term: 'Open time',
    says: 'How long combed mortar will still take a tile.',
    module: 'time-and-weather',
  },
  patch: {
    term: 'Patch',
    says: 'A compound that fills a hollow in a floor before tile. It cures first; setting mortar is no patch.',
    module: 'flat-first',
    also: ['leveller', 'levelling compound'],
  },
  pitch: {
    term: 'Pitch',
    says: 'From the middle of one ridge to the middle of the next: the notch and one tooth.',
    module: 'reading-a-notch',
  },
  pocket: {
    term: 'Air pocket',
    says: 'Air shut in under a tile with mortar all round it. Pressing squeezes it; only a way out removes it.',
    module: 'setting',
  },
  'pot-life': {
    term: 'Pot life',
    says: 'How long a mixed batch stays fit for use in the bucket.',
    module: 'mixing',
  },
  pull: {
    term: 'Pulling a tile',
    says: 'Lifting a tile just set to see how much of its back has taken mortar.',
    module: 'pulling-a-tile',
    also: ['lifting'],
  },
  rectified: {
    term: 'Rectified tile',
    says: 'Tile whose edges are ground after firing, so that all are very nearly one size.',
    module: 'bowed-tile',
  },
  retemper: {
    term: 'Retempering',
    says: 'Adding water to a batch that has begun to stiffen. Not done.',
    module: 'mixing',
  },
  ridge: {
    term: 'Ridge',
    says: 'A line of mortar that a notch leaves standing.',
    module: 'what-the-ridges-are-for',
  },
  sag: {
    term: 'Sag',
    says: 'Tile slipping down a wall, or a ridge slumping under its own weight.',
    module: 'mixing',
  },
  skin: {
    term: 'Skin',
    says: 'The dry film that forms on ridges left open. It looks like mortar and does not bond.',
    module: 'time-and-weather',
  },
  slake: {
    term: 'Slaking',
    says: 'Letting a fresh mix rest so that the powder takes up its water, then mixing again without adding more.',
    module: 'mixing',
  },
  'slanted-notch': {
    term: 'Slanted notch',
    says: 'A notch cut at a slope, so that its ridge leans and falls with little sliding.',
    module: 'large-tile-and-panels',
    also: ['collapsing notch'],
  },
  'spot-bond': {
    term: 'Spot bonding',
    says: 'Setting tile on dabs of mortar. Not accepted: most of the back hangs over air.',
    module: 'pulling-a-tile',
    also: ['dabs'],
  },
  'squeeze-up': {
    term: 'Squeeze-up',
    says: 'Mortar pushed up into the joint as the tile goes down.',
    module: 'small-tile-and-mosaics',
  },
  straightedge: {
    term: 'Straightedge',
    says: 'A stiff, true bar laid on a surface to find how far from flat it is.',
    module: 'flat-first',
  },
  substrate: {
    term: 'Substrate',
    says: 'Whatever the tile is set on: slab, screed, board, mat or membrane.',
    module: 'flat-first',
    also: ['backing', 'base'],
  },
  tooth: {
    term: 'Tooth',
    says: 'The steel between two notches. It scrapes its width of floor nearly clean.',
    module: 'reading-a-notch',
    also: ['land'],
  },
  twist: {
    term: 'Twist',
    says: 'One corner of a tile out of the plane of the other three.',
    module: 'bowed-tile',
    also: ['warpage'],
  },
  uncoupling: {
    term: 'Uncoupling mat',
    says: 'A mat that lets floor and tile move a little without pulling on each other.',
    module: 'under-boards-and-membranes',
  },
  void: {
    term: 'Void',
    says: 'A place under the tile with no mortar, or with mortar that never touched.',
    module: 'what-the-ridges-are-for',
  },
  waste: {
    term: 'Waste',
    says: 'Mortar bought and not in the bed: bucket, trowel, clean-up and the low places in the floor.',
    module: 'how-much-to-buy',
  },
  yield: {
    term: 'Yield of a bag',
    says: 'The volume of mixed mortar that one bag makes.',
    module: 'how-much-to-buy',
  },
} as const satisfies Record<string, Term>;

export type TermId = keyof typeof terms;
