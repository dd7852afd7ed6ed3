import {
  backs,
  combings,
  edges,
  exposures,
  materials,
  membranes,
  mortarClasses,
  notchShapes,
  patterns,
  presses,
  substrates,
  surfaces,
  winds,
  type Job,
} from '@sim/estimate/job-types.ts';
import { standardSets } from '@sim/rules/rule.ts';

/**
 * The boxes of the job sheet: which field of the job each one fills, and how its text is read. What a box is called
 * stands in the message catalogue; what range it accepts is the core's business, not the page's.
 */

/** How the text in a box is read. */
export type BoxKind =
  'text' | 'choice' | 'flag' | 'length' | 'area' | 'number' | 'share' | 'weight' | 'temperature' | 'trowels';

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

/** Steps of a sixteenth or a millimetre, and of a thirty-second or half a millimetre. */
const coarse = { imperial: 1 / 16, metric: 1 };
const fine = { imperial: 1 / 32, metric: 0.5 };

const lengthBox = (path: string, step?: Box['step'], bare: Bare = small): Box => ({
  path,
  kind: 'length',
  bare,
  ...(step ? { step } : {}),
});
const choiceBox = (path: string, choices: readonly string[]): Box => ({ path, kind: 'choice', choices });
const numberBox = (path: string, step?: number): Box => ({
  path,
  kind: 'number',
  ...(step === undefined ? {} : { step: each(step) }),
});
const shareBox = (path: string, step?: number): Box => ({ ...numberBox(path, step), kind: 'share' });
const flagBox = (path: string): Box => ({ path, kind: 'flag' });

const stiffnesses = ['slumps', 'holds', 'stiff'] as const satisfies readonly Job['mortar']['stiffness'][];

const areaBoxes = {
  name: { path: 'name', kind: 'text' },
  area: { path: 'areaM2', kind: 'area' },
  surface: choiceBox('surface', surfaces),
  exposure: choiceBox('exposure', exposures),
  substrate: choiceBox('substrate', substrates),
  membrane: choiceBox('membrane', membranes),
  heated: flagBox('heated'),
  sun: flagBox('sun'),
  overRoom: flagBox('overRoom'),
  fallRun: lengthBox('fallRunMm', undefined, long),
  material: choiceBox('tile.material', materials),
  length: lengthBox('tile.lengthMm'),
  width: lengthBox('tile.widthMm'),
  thickness: lengthBox('tile.thicknessMm', { imperial: 1 / 16, metric: 0.5 }),
  piece: lengthBox('tile.pieceMm'),
  edge: choiceBox('tile.edge', edges),
  back: choiceBox('tile.back', backs),
  relief: lengthBox('tile.reliefMm', fine),
  bow: lengthBox('tile.measuredBowMm', fine),
  sizeVariation: lengthBox('tile.sizeVariationMm', fine),
  light: flagBox('tile.light'),
  moistureSensitive: flagBox('tile.moistureSensitive'),
  pattern: choiceBox('pattern', patterns),
  offset: shareBox('offsetShare'),
  mockUp: flagBox('mockUpApproved'),
  joint: lengthBox('jointMm', coarse),
  flatness: lengthBox('flatnessMm', coarse),
  flatnessOver: lengthBox('flatnessOverMm', undefined, long),
  combed: choiceBox('technique.comb', combings),
  pressed: choiceBox('technique.press', presses),
  moved: lengthBox('technique.moveMm', coarse),
  bareBack: flagBox('technique.bareBack'),
} as const;

const jobBoxes = {
  standards: choiceBox('standards', standardSets),
  trowels: { path: 'trowelsAtHand', kind: 'trowels' },
  makerShape: choiceBox('instructions.notch.shape', notchShapes),
  makerWidth: lengthBox('instructions.notch.widthMm'),
  makerDepth: lengthBox('instructions.notch.depthMm'),
  makerTooth: lengthBox('instructions.notch.toothMm'),
  makerCoverage: shareBox('instructions.minCoverage', 5),
  makerMortar: choiceBox('instructions.mortarClass', mortarClasses),
  bag: { path: 'mortar.bagKg', kind: 'weight' },
  bagYield: numberBox('mortar.yieldLPerBag'),
  bagWater: numberBox('mortar.waterLPerBag'),
  openTime: numberBox('mortar.openMin', 5),
  potLife: numberBox('mortar.potLifeMin', 10),
  stiffness: choiceBox('mortar.stiffness', stiffnesses),
  price: numberBox('mortar.priceEach'),
  bagsAtHand: numberBox('mortar.bagsAtHand', 1),
  pace: numberBox('crew.minPerTile', 1),
  setters: numberBox('crew.setters', 1),
  temperature: { path: 'crew.temperatureC', kind: 'temperature', step: { imperial: 5, metric: 2 } },
  wind: choiceBox('crew.wind', winds),
  waste: shareBox('wasteShare', 5),
} as const;

export type AreaBoxId = keyof typeof areaBoxes;
export type JobBoxId = keyof typeof jobBoxes;

/** One area of the job: a floor, a wall, a shower. */
export const AREA_BOXES: Readonly<Record<AreaBoxId, Box>> = areaBoxes;
/** What holds for the whole job. */
export const JOB_BOXES: Readonly<Record<JobBoxId, Box>> = jobBoxes;

export const areaBoxIds = Object.keys(AREA_BOXES) as AreaBoxId[];
export const jobBoxIds = Object.keys(JOB_BOXES) as JobBoxId[];
