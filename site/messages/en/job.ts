import type { AreaBoxId, JobBoxId } from '@site/islands/job/catalogue.ts';
import type { Misread } from '@site/islands/job/read-box.ts';

/** Words of the job sheet, around its form. The words of a plan stand in `plan.ts`. */
export const job = {
  title: 'Job sheet',
  description: 'A tile job in, a plan out: trowel, method, coverage to reach, bags, and why.',
  lead: 'Say what you are setting and where. The sheet says which notch, how to comb and set, what to buy and what to pull, and where each line comes from.',
  jobName: 'Name of the job',
  area: 'Area',
  areaNumber: (number: number) => `Area ${number}`,
  copyOf: (name: string, number: number) => (name === '' ? `Copy of area ${number}` : `${name}, copy`),
  whole: 'The whole job',
  more: 'More about this area',
  moreJob: 'Mortar, crew and weather',
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
export const areaLabels: Record<AreaBoxId, { label: string; hint?: string }> = {
  name: { label: 'Name of the area' },
  area: { label: 'Size of the area', hint: 'A figure, or two sides: 10 × 12' },
  surface: { label: 'Surface' },
  exposure: { label: 'Place' },
  substrate: { label: 'Backing' },
  membrane: { label: 'Under the tile' },
  heated: { label: 'Heated floor' },
  material: { label: 'Tile' },
  length: { label: 'Length' },
  width: { label: 'Width' },
  thickness: { label: 'Thickness' },
  edge: { label: 'Edge', hint: 'Rectified: ground to size after firing' },
  back: { label: 'Back of the tile' },
  relief: { label: 'Depth of the back’s ribs' },
  bow: { label: 'Bow you measured', hint: 'Middle of the back against a straightedge; empty: what the tile may have' },
  pattern: { label: 'Layout' },
  offset: { label: 'Offset', hint: 'Share of the tile’s length: 1/3, 50 %' },
  joint: { label: 'Joint' },
  flatness: { label: 'Floor out of flat by', hint: 'Largest gap under the straightedge' },
  flatnessOver: { label: 'Straightedge' },
};

export const jobLabels: Record<JobBoxId, { label: string; hint?: string }> = {
  standards: { label: 'Standards' },
  bag: { label: 'Bag of mortar' },
  bagYield: { label: 'Litres mixed from a bag', hint: 'From the bag; empty: worked out from its weight' },
  price: { label: 'Price of a bag' },
  pace: { label: 'Minutes to set a tile' },
  setters: { label: 'Setters' },
  temperature: { label: 'Temperature' },
  wind: { label: 'Air' },
  waste: { label: 'Allowance for waste' },
  makerCoverage: { label: 'Least coverage the maker asks for' },
};

/** Words of the lists, by the box and then by the core's word. */
export const choiceWords: Record<string, Record<string, string>> = {
  surface: { floor: 'Floor', wall: 'Wall' },
  exposure: {
    'interior-dry': 'Indoors, dry',
    'interior-wet': 'Indoors, wet (shower)',
    exterior: 'Outdoors',
    submerged: 'Under water (pool)',
  },
  substrate: {
    concrete: 'Concrete or screed',
    plywood: 'Plywood',
    drywall: 'Drywall',
    plaster: 'Plaster',
    masonry: 'Block or brick',
  },
  membrane: {
    none: 'Nothing: straight on the backing',
    'sheet-waterproofing': 'Bonded waterproof sheet',
    'liquid-waterproofing': 'Liquid waterproofing',
    'uncoupling-mat': 'Uncoupling mat',
    'heated-mat': 'Mat with heating cable',
    'backer-board': 'Cement board',
  },
  material: { porcelain: 'Porcelain', ceramic: 'Ceramic', stone: 'Stone', glass: 'Glass', mosaic: 'Mosaic on sheets' },
  edge: { rectified: 'Rectified', calibrated: 'Calibrated', natural: 'As fired' },
  back: { flat: 'Flat', ribbed: 'Ribbed' },
  pattern: { grid: 'Straight grid', offset: 'Offset rows', diagonal: 'Diagonal', herringbone: 'Herringbone' },
  standards: { 'north-america': 'North America (ANSI)', 'iso-en': 'International and European (ISO, EN)' },
  wind: { still: 'Still', breeze: 'Light air', windy: 'Windy or sunny' },
};

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
