import { describe, expect, test } from 'vitest';

import { verbs } from '@sim/calc/verbs.ts';

/** The commands' examples, as they stand in the documentation, and the fields that outside checks rely on. */
const job = {
  standards: 'north-america',
  areas: [
    {
      name: 'Hall floor',
      areaM2: 18.6,
      surface: 'floor',
      exposure: 'interior-dry',
      heated: false,
      substrate: 'concrete',
      flatnessMm: 3,
      flatnessOverMm: 3050,
      membrane: 'none',
      pattern: 'offset',
      offsetShare: 0.5,
      tile: {
        material: 'porcelain',
        lengthMm: 610,
        widthMm: 305,
        thicknessMm: 9,
        edge: 'rectified',
        back: 'flat',
        reliefMm: 0,
        measuredBowMm: null,
      },
      jointMm: 3.2,
    },
  ],
  trowelsAtHand: null,
  instructions: { notch: null, minCoverage: null, mortarClass: null },
  mortar: { bagKg: 22.7, yieldLPerBag: null, priceEach: null },
  crew: { minPerTile: 4, setters: 1, temperatureC: 21, wind: 'still' },
  wasteShare: 0.1,
};
const pull = {
  standards: 'north-america',
  exposure: 'interior-wet',
  surface: 'floor',
  kind: 'tile',
  material: 'porcelain',
  thicknessMm: 9,
  pulls: [{ coverage: 0.96, backCoatOnly: false, voids: [{ areaMm2: 900, toCornerMm: 120, toEdgeMm: 60 }] }],
  hollowSound: null,
};

/** Runs a verb and reads back what it prints. */
async function answerTo(verb: string, input: unknown): Promise<Record<string, unknown>> {
  const run = await verbs[verb]?.();
  const answer = run?.(input);
  if (!answer?.ok) throw new Error(JSON.stringify(answer?.faults));
  return JSON.parse(JSON.stringify(answer.value)) as Record<string, unknown>;
}

describe('calc plan', () => {
  test('answers its example with every field, and nothing that JSON can’t hold', async () => {
    const plan = await answerTo('plan', job);
    expect(Object.keys(plan)).toEqual(expect.arrayContaining(['areas', 'bags', 'findings', 'assumed']));
    const [area] = plan['areas'] as Record<string, unknown>[];
    for (const field of [
      'notch',
      'alternatives',
      'rejected',
      'comb',
      'butterBack',
      'flattenRidges',
      'method',
      'mortarKind',
      'minCoverage',
      'predicted',
      'meanBedMm',
      'minJointMm',
      'maxOffsetShare',
      'maxLippageMm',
      'expectedLippageMm',
      'flatnessRequired',
      'layers',
      'bags',
      'batches',
      'spreadAhead',
      'pull',
      'findings',
    ])
      expect(area?.[field], field).toBeDefined();
    expect(area?.['notch']).toMatchObject({ shape: 'square', depthMm: 12.7 });
    expect(Object.keys(area?.['predicted'] as object)).toEqual(
      expect.arrayContaining(['median', 'low', 'high', 'chanceOfPass']),
    );
    expect(Object.keys(area?.['bags'] as object)).toEqual(
      expect.arrayContaining(['low', 'plan', 'high', 'labelWouldSay']),
    );
    for (const one of area?.['findings'] as Record<string, unknown>[])
      expect(Object.keys(one)).toEqual(['rule', 'severity', 'says', 'source']);
    for (const one of area?.['rejected'] as Record<string, unknown>[]) expect(one['rule']).toBeTypeOf('string');
  });
  test('half bond, a bowed edge and a narrow joint are named on the example', async () => {
    const [area] = (await answerTo('plan', job))['areas'] as { findings: { rule: string; severity: string }[] }[];
    const said = area?.findings.map((one) => `${one.severity} ${one.rule}`);
    expect(said).toEqual(expect.arrayContaining(['stop offset.third', 'warn lippage.narrow', 'warn set.joint-limits']));
  });
});

describe('calc judge', () => {
  test('answers its example: nothing fails, and one tile is not enough', async () => {
    const found = await answerTo('judge', pull);
    expect(found['verdict']).toBe('not-enough');
    for (const limit of found['limits'] as Record<string, unknown>[])
      for (const field of ['name', 'required', 'found', 'holds', 'source']) expect(limit).toHaveProperty(field);
    expect(found).toHaveProperty('findings');
  });
});
