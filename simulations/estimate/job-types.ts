import type { NotchShape } from '../bed/types.ts';
import type { StandardSet } from '../rules/rule.ts';
import type { Notch } from '../trowel/notch.ts';

export const surfaces = ['floor', 'wall'] as const;
export const exposures = ['interior-dry', 'interior-wet', 'exterior', 'submerged'] as const;
export const substrates = [
  'concrete',
  'screed',
  'plywood',
  'plaster',
  'drywall',
  'gypsum-fibre',
  'cement-board',
  'foam-board',
  'masonry',
  'old-tile',
] as const;
export const membranes = [
  'none',
  'sheet-waterproofing',
  'liquid-waterproofing',
  'uncoupling-mat',
  'heated-mat',
  'backer-board',
] as const;
export const patterns = ['grid', 'offset', 'diagonal', 'herringbone'] as const;
export const materials = ['porcelain', 'ceramic', 'stone', 'glass', 'mosaic'] as const;
export const edges = ['rectified', 'calibrated', 'natural'] as const;
export const backs = ['flat', 'ribbed', 'mesh'] as const;
export const winds = ['still', 'breeze', 'windy'] as const;
export const notchShapes = ['square', 'v', 'u', 'slanted'] as const satisfies readonly NotchShape[];
export const combings = ['straight', 'swirl'] as const;
export const presses = ['untold', 'usual', 'light'] as const;
export const mortarClasses = ['thin-set', 'large-and-heavy', 'epoxy'] as const;

/** A tile as the job gives it, every default filled in. Lengths mm. */
export interface JobTile {
  material: (typeof materials)[number];
  lengthMm: number;
  widthMm: number;
  thicknessMm: number;
  edge: (typeof edges)[number];
  back: (typeof backs)[number];
  /** Mean depth of the back's relief. */
  reliefMm: number;
  /** Middle of the back over its ends; null when nobody measured. */
  measuredBowMm: number | null;
  /** Longest face less shortest in the lot; null when nobody measured. */
  sizeVariationMm: number | null;
  /** Edge of one piece of a sheet; null for single tiles. */
  pieceMm: number | null;
  /** Light or see-through, so that grey mortar would show. */
  light: boolean;
  /** Warps or stains with water: serpentine, mesh- or resin-backed stone. */
  moistureSensitive: boolean;
}

/** How the work is really done where that is known to differ from the sheet; the prediction is made for it. */
export interface Technique {
  comb: (typeof combings)[number];
  /** How hard the tile is pressed, if that is known: a light hand hardly more than lays it down. */
  press: (typeof presses)[number];
  /** How far the tile is moved there and back, mm, nought where it is only pressed; null where that is not known. */
  moveMm: number | null;
  /** True where no back coat is given, whatever the sheet asks for. */
  bareBack: boolean;
}

/** One area of a job, every default filled in. */
export interface Area {
  name: string;
  areaM2: number;
  surface: (typeof surfaces)[number];
  exposure: (typeof exposures)[number];
  heated: boolean;
  sun: boolean;
  /** Outdoors over a room. */
  overRoom: boolean;
  substrate: (typeof substrates)[number];
  flatnessMm: number | null;
  flatnessOverMm: number;
  /** Length over which an outdoor floor falls. */
  fallRunMm: number | null;
  membrane: (typeof membranes)[number];
  pattern: (typeof patterns)[number];
  offsetShare: number;
  mockUpApproved: boolean;
  tile: JobTile;
  jointMm: number;
  technique: Technique;
}

export interface Job {
  standards: StandardSet;
  areas: Area[];
  trowelsAtHand: Notch[] | null;
  instructions: {
    notch: Notch | null;
    minCoverage: number | null;
    mortarClass: (typeof mortarClasses)[number] | null;
  };
  mortar: {
    bagKg: number;
    yieldLPerBag: number | null;
    waterLPerBag: number | null;
    openMin: number | null;
    potLifeMin: number | null;
    stiffness: 'slumps' | 'holds' | 'stiff';
    priceEach: number | null;
    bagsAtHand: number | null;
  };
  crew: { minPerTile: number; setters: number; temperatureC: number; wind: (typeof winds)[number] };
  wasteShare: number;
}

/** Defaults that were taken, by path: `{"areas[0].jointMm": 3.2}`. */
export type Assumed = Record<string, unknown>;
