import * as z from 'zod/mini';

import { exposures, surfaces, type Assumed } from '../estimate/job-types.ts';
import type { Reading } from '../input/fault.ts';
import { listOf, numberFrom, oneOf, yesOrNo } from '../input/fields.ts';
import { read } from '../input/read.ts';
import { standardSets } from '../rules/rule.ts';
import { mortarSides, type Pull, pullKinds, pullMaterials, ridgeStates } from './pull-types.ts';
import { wholePull } from './whole-pull.ts';

const maybe = () => z.optional(z.nullable(yesOrNo()));

const pulledVoid = z.strictObject({
  areaMm2: numberFrom(0, 10_000_000, 'mm²'),
  toCornerMm: z.optional(numberFrom(0, 3600, 'mm')),
  toEdgeMm: z.optional(numberFrom(0, 3600, 'mm')),
});

const pulled = z.strictObject({
  coverage: numberFrom(0, 1),
  backCoatOnly: z.optional(yesOrNo()),
  voids: z.optional(listOf(pulledVoid, 0, 500)),
});

const pull = z.strictObject({
  standards: z.optional(oneOf(standardSets)),
  exposure: z.optional(oneOf(exposures)),
  surface: z.optional(oneOf(surfaces)),
  kind: z.optional(oneOf(pullKinds)),
  material: z.optional(oneOf(pullMaterials)),
  thicknessMm: z.optional(numberFrom(2, 60, 'mm')),
  pulls: z.optional(listOf(pulled, 0, 1000)),
  hollowSound: maybe(),
  overMembrane: z.optional(yesOrNo()),
  bedMm: z.optional(z.nullable(numberFrom(0, 200, 'mm'))),
  signs: z.optional(
    z.strictObject({
      mortarOn: z.optional(z.nullable(oneOf(mortarSides))),
      ridges: z.optional(z.nullable(oneOf(ridgeStates))),
      cutTilesOnly: maybe(),
      powder: maybe(),
      skin: maybe(),
      crackOverSeam: maybe(),
      dropsStand: maybe(),
    }),
  ),
});

/** Reads what was found on lifted tiles, whole or with every fault. */
export function readPull(input: unknown): Reading<{ pull: Pull; assumed: Assumed }> {
  const reading = read(pull, input);
  if (!reading.ok) return reading;
  const assumed: Assumed = {};
  return { ok: true, value: { pull: wholePull(reading.value, assumed), assumed } };
}
