/**
 * The boxes of the job sheet: which field of the job each one fills, and how its text is read. What a box is called
 * stands in the message catalogue; what range it accepts is the core's business, not the page's.
 */

/** How the text in a box is read. */
export type BoxKind = 'text' | 'choice' | 'flag' | 'length' | 'area' | 'number' | 'share' | 'weight' | 'temperature';

/** The unit a length stands in when the person writes none. */
export interface Bare {
  imperial: 'in' | 'ft';
  metric: 'mm' | 'm';
}

export interface Box {
  /** The field of the job, as the core names it: `tile.lengthMm` inside an area, `crew.minPerTile` in the job. */
  readonly path: string;
  readonly kind: BoxKind;
  readonly choices?: readonly string[];
  readonly bare?: Bare;
  /** One press of − or +, in the box's own unit; a box without it has no stepper. */
  readonly step?: { readonly imperial: number; readonly metric: number };
}

const small: Bare = { imperial: 'in', metric: 'mm' };
const long: Bare = { imperial: 'ft', metric: 'm' };

const each = (step: number) => ({ imperial: step, metric: step });

/** One area of the job: a floor, a wall, a shower. */
export const AREA_BOXES = {
  name: { path: 'name', kind: 'text' },
  area: { path: 'areaM2', kind: 'area' },
  surface: { path: 'surface', kind: 'choice', choices: ['floor', 'wall'] },
  exposure: {
    path: 'exposure',
    kind: 'choice',
    choices: ['interior-dry', 'interior-wet', 'exterior', 'submerged'],
  },
  substrate: { path: 'substrate', kind: 'choice', choices: ['concrete', 'plywood', 'drywall', 'plaster', 'masonry'] },
  membrane: {
    path: 'membrane',
    kind: 'choice',
    choices: ['none', 'sheet-waterproofing', 'liquid-waterproofing', 'uncoupling-mat', 'heated-mat', 'backer-board'],
  },
  heated: { path: 'heated', kind: 'flag' },
  material: { path: 'tile.material', kind: 'choice', choices: ['porcelain', 'ceramic', 'stone', 'glass', 'mosaic'] },
  length: { path: 'tile.lengthMm', kind: 'length', bare: small },
  width: { path: 'tile.widthMm', kind: 'length', bare: small },
  thickness: { path: 'tile.thicknessMm', kind: 'length', bare: small, step: { imperial: 1 / 16, metric: 0.5 } },
  edge: { path: 'tile.edge', kind: 'choice', choices: ['rectified', 'calibrated', 'natural'] },
  back: { path: 'tile.back', kind: 'choice', choices: ['flat', 'ribbed'] },
  relief: { path: 'tile.reliefMm', kind: 'length', bare: small, step: { imperial: 1 / 32, metric: 0.5 } },
  bow: { path: 'tile.measuredBowMm', kind: 'length', bare: small, step: { imperial: 1 / 32, metric: 0.5 } },
  pattern: { path: 'pattern', kind: 'choice', choices: ['grid', 'offset', 'diagonal', 'herringbone'] },
  offset: { path: 'offsetShare', kind: 'share' },
  joint: { path: 'jointMm', kind: 'length', bare: small, step: { imperial: 1 / 16, metric: 1 } },
  flatness: { path: 'flatnessMm', kind: 'length', bare: small, step: { imperial: 1 / 16, metric: 1 } },
  flatnessOver: { path: 'flatnessOverMm', kind: 'length', bare: long },
} as const satisfies Record<string, Box>;

/** What holds for the whole job. */
export const JOB_BOXES = {
  standards: { path: 'standards', kind: 'choice', choices: ['north-america', 'iso-en'] },
  bag: { path: 'mortar.bagKg', kind: 'weight' },
  bagYield: { path: 'mortar.yieldLPerBag', kind: 'number' },
  price: { path: 'mortar.priceEach', kind: 'number' },
  pace: { path: 'crew.minPerTile', kind: 'number', step: each(1) },
  setters: { path: 'crew.setters', kind: 'number', step: each(1) },
  temperature: { path: 'crew.temperatureC', kind: 'temperature', step: { imperial: 5, metric: 2 } },
  wind: { path: 'crew.wind', kind: 'choice', choices: ['still', 'breeze', 'windy'] },
  waste: { path: 'wasteShare', kind: 'share', step: each(5) },
  makerCoverage: { path: 'instructions.minCoverage', kind: 'share', step: each(5) },
} as const satisfies Record<string, Box>;

export type AreaBoxId = keyof typeof AREA_BOXES;
export type JobBoxId = keyof typeof JOB_BOXES;

export const areaBoxIds = Object.keys(AREA_BOXES) as AreaBoxId[];
export const jobBoxIds = Object.keys(JOB_BOXES) as JobBoxId[];
