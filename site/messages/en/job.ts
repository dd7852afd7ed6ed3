import type { AreaBoxId, JobBoxId } from '@site/islands/job/catalogue.ts';
import type { Misread } from '@site/islands/job/read-box.ts';

/** What a box is called, and a line of help where one is needed. */
export interface BoxWords {
  label: string;
  hint?: string;
}

/** Words of the job sheet, around its form. The words of a plan stand in `plan.ts`. */
export const job = {
  title: 'Job sheet',
  description: 'A tile job in, a plan out: trowel, method, coverage to reach, bags, and why.',
  lead: 'Say what you are setting and where. The sheet says which notch, how to comb and set, what to buy and what to pull, and where each line comes from.',
  jobName: 'Name of the job',
  date: 'Date',
  area: 'Area',
  areaNumber: (number: number) => `Area ${number}`,
  copyOf: (name: string, number: number) => (name === '' ? `Copy of area ${number}` : `${name}, copy`),
  whole: 'The whole job',
  more: 'More about this area',
  asDone: 'How it is really done',
  asDoneHint: 'Only where it is known to differ from the sheet: the predicted coverage is then for that.',
  moreMortar: 'Mortar and bags',
  moreCrew: 'Crew and weather',
  moreMaker: 'The maker’s written instructions',
  makerHint: 'What the maker of the tile, the membrane or the mortar wrote comes before our choice of notch.',
  moreTrowels: 'Trowels on the truck',
  trowels: 'Trowels you have',
  trowelsHint: 'None ticked: any trowel can be bought.',
  bladeDrawing: (label: string) => `Blade of the ${label} trowel, drawn to scale`,
  usually: (value: string) => `Not said: ${value}`,
  usualSize: 'Usual sizes',
  otherSize: 'Another size',
  notSaid: 'Not said',
  undo: 'Undo',
  redo: 'Redo',
  addArea: 'Add an area',
  duplicate: 'Duplicate',
  remove: 'Remove',
  up: 'Move up',
  down: 'Move down',
  startAgain: 'Start again',
  less: (label: string) => `${label}: less`,
  greater: (label: string) => `${label}: more`,
  readAs: (text: string) => `read as ${text}`,
  left: (label: string) => `${label} is left out of the plan until this is put right.`,
  kept: 'Kept in this browser.',
  notKept: 'This browser keeps nothing (a private window, or its storage is full). Use the link to carry the job on.',
  fromLink: 'Opened from the link. Undo brings back what stood here before.',
  brokenLink: 'The link is cut off or altered, so no job could be read from it. What was here stays.',
  otherLink: 'The link was made by another version of this page, so no job could be read from it. What was here stays.',
  otherTab: 'This job was changed in another tab.',
  takeOther: 'Show that one',
} as const;

/** What each box of an area is called, and a line of help where one is needed. */
export const areaLabels: Record<AreaBoxId, BoxWords> = {
  name: { label: 'Name of the area' },
  area: { label: 'Size of the area', hint: 'A figure, or two sides: 10 × 12' },
  surface: { label: 'Surface' },
  exposure: { label: 'Place' },
  substrate: { label: 'Backing' },
  membrane: { label: 'Under the tile' },
  heated: { label: 'Heated floor' },
  sun: { label: 'In the sun or behind large windows' },
  overRoom: { label: 'Over a room' },
  fallRun: { label: 'Length it falls over' },
  material: { label: 'Tile' },
  length: { label: 'Length' },
  width: { label: 'Width' },
  thickness: { label: 'Thickness' },
  piece: { label: 'Edge of one piece' },
  edge: { label: 'Edge', hint: 'Rectified: ground to size after firing' },
  back: { label: 'Back of the tile' },
  relief: { label: 'Depth of the back’s ribs' },
  bow: {
    label: 'Bow you measured',
    hint: 'Middle of the back against a straightedge; empty: what such a tile may have',
  },
  sizeVariation: { label: 'Longest less shortest', hint: 'Measured over a few tiles of the lot' },
  light: { label: 'Light or see-through' },
  moistureSensitive: { label: 'Warps or stains with water' },
  pattern: { label: 'Layout' },
  offset: { label: 'Offset', hint: 'Share of the tile’s length: 1/3, 50 %' },
  mockUp: { label: 'A mock-up of this offset was approved' },
  joint: { label: 'Joint' },
  flatness: { label: 'Out of flat by', hint: 'Largest gap under the straightedge; empty: not measured' },
  flatnessOver: { label: 'Straightedge' },
  combed: { label: 'Combed' },
  pressed: { label: 'Pressed' },
  moved: { label: 'Moved there and back', hint: '0: only pressed; empty: not known' },
  bareBack: { label: 'No back coat is given' },
};

export const jobLabels: Record<JobBoxId, BoxWords> = {
  standards: { label: 'Standards' },
  trowels: { label: 'Trowels you have' },
  makerShape: { label: 'Notch the maker asks for' },
  makerWidth: { label: 'Its width' },
  makerDepth: { label: 'Its depth' },
  makerTooth: { label: 'Its tooth', hint: 'Empty: as wide as the notch' },
  makerCoverage: { label: 'Least coverage the maker asks for' },
  makerMortar: { label: 'Mortar the maker asks for' },
  bag: { label: 'Bag of mortar' },
  bagYield: { label: 'Litres mixed from a bag', hint: 'Empty: worked out from its weight' },
  bagWater: { label: 'Litres of water to a bag', hint: 'From the bag' },
  openTime: { label: 'Open time, minutes', hint: 'From the bag' },
  potLife: { label: 'Pot life, minutes', hint: 'From the bag' },
  stiffness: { label: 'How the mix stands' },
  price: { label: 'Price of a bag' },
  bagsAtHand: { label: 'Bags you have' },
  pace: { label: 'Minutes to set a tile' },
  setters: { label: 'Setters' },
  temperature: { label: 'Temperature' },
  wind: { label: 'Air' },
  waste: { label: 'Allowance for waste' },
};

/** Words of the lists, by the box and then by the core's word. */
export const choiceWords: Readonly<Partial<Record<AreaBoxId | JobBoxId, Readonly<Record<string, string>>>>> = {
  surface: { floor: 'Floor', wall: 'Wall' },
  combed: { straight: 'In straight lines', swirl: 'In swirls' },
  pressed: { untold: 'Not known', usual: 'Leaned on', light: 'Lightly' },
  exposure: {
    'interior-dry': 'Indoors, dry',
    'interior-wet': 'Indoors, wet (shower)',
    exterior: 'Outdoors',
    submerged: 'Under water (pool)',
  },
  substrate: {
    concrete: 'Concrete',
    screed: 'Screed',
    plywood: 'Plywood',
    plaster: 'Plaster',
    drywall: 'Drywall',
    'gypsum-fibre': 'Gypsum fibreboard',
    'cement-board': 'Cement board',
    'foam-board': 'Foam board',
    masonry: 'Block or brick',
    'old-tile': 'Old tile',
  },
  membrane: {
    none: 'Nothing more',
    'sheet-waterproofing': 'Bonded waterproof sheet',
    'liquid-waterproofing': 'Liquid waterproofing',
    'uncoupling-mat': 'Uncoupling mat',
    'heated-mat': 'Mat with heating cable',
    'backer-board': 'Cement board over the backing',
  },
  material: { porcelain: 'Porcelain', ceramic: 'Ceramic', stone: 'Stone', glass: 'Glass', mosaic: 'Mosaic on sheets' },
  edge: { rectified: 'Rectified', calibrated: 'Calibrated', natural: 'As fired' },
  back: { flat: 'Flat', ribbed: 'Ribbed', mesh: 'Mesh' },
  pattern: { grid: 'Straight grid', offset: 'Offset rows', diagonal: 'Diagonal', herringbone: 'Herringbone' },
  standards: { 'north-america': 'North America (ANSI)', 'iso-en': 'International and European (ISO, EN)' },
  makerShape: { square: 'Square', v: 'V', u: 'U', slanted: 'Slanted' },
  makerMortar: { 'thin-set': 'Thin-set', 'large-and-heavy': 'For large and heavy tile', epoxy: 'Epoxy' },
  stiffness: { slumps: 'Slumps', holds: 'Holds a ridge', stiff: 'Stiff' },
  wind: { still: 'Still', breeze: 'Light air', windy: 'Windy' },
};

/** The word of a choice, by box. */
export const choiceWord = (box: string, choice: string): string =>
  (choiceWords as Readonly<Record<string, Readonly<Record<string, string>> | undefined>>)[box]?.[choice] ?? choice;

/** Why a box is not understood: what is wrong, and what is accepted. */
export const misreadWords: Record<Misread, string> = {
  'no-number': 'This is not a number; type one such as 12, 12.5 or 12,5.',
  comma: 'The comma could mean thousands or a decimal; leave it out, or use a point for the decimal.',
  length: 'This is not a length; type one such as 1/4, 1 1/2 in, 6.5 mm or 2 ft.',
  area: 'This is not an area; type one such as 120, 11 m², or two sides such as 10 × 12.',
  share: 'This is not a share; type a percentage such as 10 %, or a fraction such as 1/3.',
  weight: 'This is not a weight; type one such as 50 lb or 25 kg.',
  temperature: 'This is not a temperature; type one such as 70 °F or 21 °C.',
  choice: 'This is not one of the list; choose again.',
};
