import * as z from 'zod/mini';

import type { Reading } from '../input/fault.ts';
import { listOf, numberFrom, oneOf, textUpTo, wholeFrom, yesOrNo } from '../input/fields.ts';
import { read } from '../input/read.ts';
import { standardSets } from '../rules/rule.ts';
import { areaDefaults, jobDefaults } from './defaults.ts';
import { fillIn } from '../input/fill-in.ts';
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
  type Assumed,
  type Job,
} from './job-types.ts';

export type { Area, Assumed, Job, JobTile } from './job-types.ts';
import type { Notch } from '../trowel/notch.ts';

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
  technique: z.optional(
    z.strictObject({
      comb: z.optional(oneOf(combings)),
      press: z.optional(oneOf(presses)),
      moveMm: z.optional(z.nullable(numberFrom(0, 100, 'mm'))),
      bareBack: z.optional(yesOrNo()),
    }),
  ),
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
  const standards = rest.standards ?? standardSets[0];
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
