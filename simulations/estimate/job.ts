import * as z from 'zod/mini';

import type { NotchShape } from '../bed/types.ts';
import type { Reading } from '../input/fault.ts';
import { listOf, numberFrom, oneOf, textUpTo, wholeFrom, yesOrNo } from '../input/fields.ts';
import { read } from '../input/read.ts';
import type { StandardSet } from '../rules/rule.ts';
import { standardSets } from '../rules/rule.ts';
import { areaDefaults, jobDefaults } from './defaults.ts';
import { fillIn } from './fill-in.ts';
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
export const mortarClasses = ['thin-set', 'large-and-heavy', 'epoxy'] as const;

const notch = z.strictObject({
  shape: oneOf(notchShapes),
  widthMm: numberFrom(1, 40, 'mm'),
  depthMm: numberFrom(1, 40, 'mm'),
  toothMm: z.optional(numberFrom(0, 40, 'mm')),
});

const tile = z.strictObject({
  material: z.optional(oneOf(materials)),
  lengthMm: numberFrom(5, 3600, 'mm'),
  widthMm: numberFrom(5, 3600, 'mm'),
  thicknessMm: z.optional(numberFrom(2, 60, 'mm')),
  edge: z.optional(oneOf(edges)),
  back: z.optional(oneOf(backs)),
  reliefMm: z.optional(numberFrom(0, 10, 'mm')),
  measuredBowMm: z.optional(z.nullable(numberFrom(-10, 10, 'mm'))),
  sizeVariationMm: z.optional(z.nullable(numberFrom(0, 10, 'mm'))),
  pieceMm: z.optional(z.nullable(numberFrom(5, 100, 'mm'))),
  light: z.optional(yesOrNo()),
  moistureSensitive: z.optional(yesOrNo()),
});

const area = z.strictObject({
  name: z.optional(textUpTo(80)),
  areaM2: numberFrom(0.01, 100000, 'm²'),
  surface: z.optional(oneOf(surfaces)),
  exposure: z.optional(oneOf(exposures)),
  heated: z.optional(yesOrNo()),
  sun: z.optional(yesOrNo()),
  overRoom: z.optional(yesOrNo()),
  substrate: z.optional(oneOf(substrates)),
  flatnessMm: z.optional(z.nullable(numberFrom(0, 100, 'mm'))),
  flatnessOverMm: z.optional(numberFrom(200, 15000, 'mm')),
  fallRunMm: z.optional(z.nullable(numberFrom(100, 100000, 'mm'))),
  membrane: z.optional(oneOf(membranes)),
  pattern: z.optional(oneOf(patterns)),
  offsetShare: z.optional(numberFrom(0, 0.5)),
  mockUpApproved: z.optional(yesOrNo()),
  tile,
  jointMm: z.optional(numberFrom(0, 50, 'mm')),
});

const job = z.strictObject({
  standards: z.optional(oneOf(standardSets)),
  areas: listOf(area, 1, 60),
  trowelsAtHand: z.optional(z.nullable(listOf(notch, 1, 30))),
  instructions: z.optional(
    z.strictObject({
      notch: z.optional(z.nullable(notch)),
      minCoverage: z.optional(z.nullable(numberFrom(0, 1))),
      mortarClass: z.optional(z.nullable(oneOf(mortarClasses))),
    }),
  ),
  mortar: z.optional(
    z.strictObject({
      bagKg: z.optional(numberFrom(1, 60, 'kg')),
      yieldLPerBag: z.optional(z.nullable(numberFrom(1, 100, 'L'))),
      waterLPerBag: z.optional(z.nullable(numberFrom(0.1, 30, 'L'))),
      openMin: z.optional(z.nullable(numberFrom(1, 180, 'min'))),
      potLifeMin: z.optional(z.nullable(numberFrom(5, 600, 'min'))),
      stiffness: z.optional(oneOf(['slumps', 'holds', 'stiff'])),
      priceEach: z.optional(z.nullable(numberFrom(0, 100000))),
      bagsAtHand: z.optional(z.nullable(numberFrom(0, 100000))),
    }),
  ),
  crew: z.optional(
    z.strictObject({
      minPerTile: z.optional(numberFrom(0.05, 600, 'min')),
      setters: z.optional(wholeFrom(1, 100)),
      temperatureC: z.optional(numberFrom(-30, 60, '°C')),
      wind: z.optional(oneOf(winds)),
    }),
  ),
  wasteShare: z.optional(numberFrom(0, 1)),
});

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

type Given = z.infer<typeof job>;
type GivenNotch = z.infer<typeof notch>;

/** A tooth not named is as wide as the notch; V notches stand tip to tip. */
const notchOf = (given: GivenNotch): Notch => ({
  ...given,
  toothMm: given.toothMm ?? (given.shape === 'v' ? 0 : given.widthMm),
});

/**
 * Reads a job sheet's input, whole or with every fault found.
 * @returns the job with every default filled in, and under `assumed` each default that was taken
 */
export function readJob(input: unknown): Reading<{ job: Job; assumed: Assumed }> {
  const reading: Reading<Given> = read(job, input);
  if (!reading.ok) return reading;
  const { areas, trowelsAtHand, instructions, ...rest } = reading.value;
  const assumed: Assumed = {};
  const standards = rest.standards ?? jobDefaults('north-america').standards;
  const whole = fillIn(rest, jobDefaults(standards), '', assumed);
  return {
    ok: true,
    value: {
      assumed,
      job: {
        ...whole,
        areas: areas.map((one, n) => fillIn(one, areaDefaults(one, n, standards), `areas[${n}]`, assumed)),
        trowelsAtHand: trowelsAtHand?.map(notchOf) ?? null,
        instructions: {
          notch: instructions?.notch ? notchOf(instructions.notch) : null,
          minCoverage: instructions?.minCoverage ?? null,
          mortarClass: instructions?.mortarClass ?? null,
        },
      },
    },
  };
}
