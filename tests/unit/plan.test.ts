import { describe, expect, test } from 'vitest';

import { readJob } from '@sim/estimate/job.ts';
import { exposures, materials, membranes, substrates, surfaces } from '@sim/estimate/job-types.ts';
import { planJob } from '@sim/estimate/plan.ts';
import { SpreadStopped } from '@sim/estimate/spread/spread.ts';
import { faultSentence } from '@sim/input/fault.ts';
import { readPull } from '@sim/judge/judge.ts';
import { isRuleId } from '@sim/rules/rulebook.ts';
import { areaOf, jobOf, judged, oblong, planOf, square } from '../reference/rules-checks/jobs.ts';

const good = { areas: [{ areaM2: 10, tile: { lengthMm: 300, widthMm: 300 } }] };
const faults = (input: unknown): string[] => {
  const reading = readJob(input);
  return reading.ok ? [] : reading.faults.map(faultSentence);
};
const withTile = (tile: Record<string, unknown>) => ({
  areas: [{ areaM2: 10, tile: { lengthMm: 300, widthMm: 300, ...tile } }],
});

describe('reading a job', () => {
  test.each([
    [withTile({ lengthMm: -3 }), 'areas[0].tile.lengthMm: is -3; give a number from 5 to 3600 mm.'],
    [withTile({ lengthMm: '300' }), 'areas[0].tile.lengthMm: is the text "300"; give a number from 5 to 3600 mm.'],
    [
      withTile({ lengthMm: Number.NaN }),
      'areas[0].tile.lengthMm: is not a finite number; give a number from 5 to 3600 mm.',
    ],
    [withTile({ lengthMm: 40000 }), 'areas[0].tile.lengthMm: is 40000; give a number from 5 to 3600 mm.'],
    [
      withTile({ lenghtMm: 300 }),
      'areas[0].tile.lenghtMm: is not a field we know; leave it out or check its spelling.',
    ],
    [
      withTile({ material: 'wood' }),
      'areas[0].tile.material: is the text "wood"; accepted are porcelain, ceramic, stone, glass, mosaic.',
    ],
    [{ areas: [] }, 'areas: is a list of 0; give a list of 1 to 60.'],
    [{}, 'areas: is missing; give a list of 1 to 60.'],
    [{ ...good, instructions: { minCoverage: 95 } }, 'instructions.minCoverage: is 95; give a number from 0 to 1.'],
  ])('%j is refused in one sentence', (input, sentence) => {
    expect(faults(input)).toEqual([sentence]);
  });
  test.each([null, 7, 'job', [], true])('%j is no job', (input) => {
    expect(faults(input)).toHaveLength(1);
  });
  test('every fault is named at once', () => {
    expect(faults(withTile({ lengthMm: -3, widthMm: 'x', reliefMm: 99 }))).toHaveLength(3);
  });
  test('what was not given is repeated under `assumed`, by path; what was given is not', () => {
    const reading = readJob({ ...good, standards: 'iso-en', crew: { setters: 2 } });
    if (!reading.ok) throw new Error('refused');
    const { assumed, job } = reading.value;
    expect(assumed['areas[0].exposure']).toBe('interior-dry');
    expect(assumed['crew.minPerTile']).toBe(4);
    expect(assumed['mortar.bagKg']).toBe(25);
    expect(assumed).not.toHaveProperty('crew.setters');
    expect(assumed).not.toHaveProperty('standards');
    expect(job.crew).toEqual({ minPerTile: 4, setters: 2, temperatureC: 21, wind: 'still' });
    expect(planJob(job, {}, assumed).assumed).toBe(assumed);
  });
  test('a tooth not named is as wide as the notch, and nothing under a V', () => {
    const reading = readJob({
      ...good,
      trowelsAtHand: [
        { shape: 'square', widthMm: 6, depthMm: 9 },
        { shape: 'v', widthMm: 6, depthMm: 5 },
      ],
    });
    expect(reading.ok && reading.value.job.trowelsAtHand?.map((one) => one.toothMm)).toEqual([6, 0]);
  });
});

describe('reading a pull', () => {
  test.each([
    [{ pulls: [{ coverage: 96 }] }, 'pulls[0].coverage: is 96; give a number from 0 to 1.'],
    [{ pulls: [{}] }, 'pulls[0].coverage: is missing; give a number from 0 to 1.'],
    [
      { pulls: [{ coverage: 1, void: [] }] },
      'pulls[0].void: is not a field we know; leave it out or check its spelling.',
    ],
    [{ kind: 'plank' }, 'kind: is the text "plank"; accepted are tile, stone, glass, panel.'],
  ])('%j is refused in one sentence', (input, sentence) => {
    const reading = readPull(input);
    expect(reading.ok ? [] : reading.faults.map(faultSentence)).toEqual([sentence]);
  });
});

describe('a sheet', () => {
  test('is the same for the same job and seed', () => {
    expect(planOf(oblong(24, 12))).toEqual(planOf(oblong(24, 12)));
  });
  test('gives each finding a rule, a severity, a sentence and a source', () => {
    for (const plan of [planOf(oblong(24, 12), { pattern: 'offset', offsetShare: 0.5 }), planOf(square(1))])
      for (const one of [...plan.findings, ...plan.areas.flatMap((area) => area.findings)]) {
        expect(isRuleId(one.rule)).toBe(true);
        expect(['stop', 'warn', 'note']).toContain(one.severity);
        expect(one.says).toMatch(/\S.*[.?]$/);
        expect(one.says).not.toMatch(/[{}]|NaN|undefined|Infinity/);
        expect(one.source.title.length).toBeGreaterThan(2);
      }
  });
  test('tells how far it has come, and stops when asked', () => {
    const seen: number[] = [];
    planJob(jobOf(square(12)), { onProgress: (share) => seen.push(share) < 0 });
    expect(seen.length).toBeGreaterThanOrEqual(200);
    expect(seen.every((share, n) => share >= 0 && share < 1 && (n === 0 || seen[n - 1] !== share))).toBe(true);
    expect(() => planJob(jobOf(square(12)), { onProgress: (share) => share > 0.5 })).toThrow(SpreadStopped);
  });
  test('several areas: bags are counted for the job and not area by area', () => {
    const reading = readJob({
      areas: [1, 2, 3].map((n) => ({ name: `Room ${n}`, areaM2: 3, tile: { lengthMm: 300, widthMm: 300 } })),
      mortar: { priceEach: 30 },
    });
    if (!reading.ok) throw new Error('refused');
    const plan = planJob(reading.value.job);
    expect(plan.areas.map((area) => area.name)).toEqual(['Room 1', 'Room 2', 'Room 3']);
    const exact = plan.areas.reduce((sum, area) => sum + area.bags.exact.plan, 0);
    expect(plan.bags.plan).toBe(Math.ceil(exact));
    expect(plan.bags.plan).toBeLessThanOrEqual(plan.areas.reduce((sum, area) => sum + area.bags.plan, 0));
    expect(plan.bags.cost).toBe(plan.bags.plan * 30);
  });
  test('a maker’s laxer coverage in a wet place is refused aloud; a stricter one stands', () => {
    const wet = { exposure: 'interior-wet' };
    const lax = areaOf(square(12), wet, { instructions: { minCoverage: 0.8 } });
    expect(lax.minCoverage).toBe(0.95);
    expect(lax.findings.find((one) => one.rule === 'coverage.wet')?.says).toContain('80 %');
    const strict = areaOf(square(12), {}, { instructions: { minCoverage: 0.9 } });
    expect(strict.minCoverage).toBe(0.9);
    expect(strict.findings.find((one) => one.rule === 'coverage.maker')?.says).toContain('90 %');
  });
  test('a maker’s notch too thin for any bed stops the sheet', () => {
    const notch = { shape: 'square', widthMm: 3.175, depthMm: 3.175 };
    const plan = areaOf(square(12), {}, { instructions: { notch } });
    expect(plan.findings.some((one) => one.rule === 'bed.least' && one.severity === 'stop')).toBe(true);
  });
  test('moisture-sensitive stone takes epoxy, whatever class is written; light stone and glass take white', () => {
    const green = areaOf(
      { ...square(12), material: 'stone', moistureSensitive: true },
      {},
      {
        instructions: { mortarClass: 'thin-set' },
      },
    );
    expect(green.mortarKind).toBe('epoxy');
    expect(green.findings.map((one) => one.rule)).toContain('safety.epoxy');
    expect(areaOf(square(12)).findings.map((one) => one.rule)).not.toContain('safety.epoxy');
    expect(areaOf({ ...square(12), material: 'stone', light: true }).mortarColour).toBe('white');
    expect(areaOf({ ...square(12), material: 'glass' }).mortarColour).toBe('white-for-glass');
    expect(areaOf(square(12)).mortarColour).toBe('any');
  });
  test('a written mortar class takes the place of ours and is reported', () => {
    const plan = areaOf(square(24), {}, { instructions: { mortarClass: 'thin-set' } });
    expect(plan.mortarKind).toBe('thin-set');
    expect(plan.bedLimitMm.most).toBeCloseTo(6.35, 9);
    expect(plan.findings.some((one) => one.rule === 'coverage.maker' && one.severity === 'warn')).toBe(true);
  });
  test('heat brings its cautions, a heavy wall its stop, cold and heat their warnings', () => {
    const rules = (area: Record<string, unknown>, job = {}, tile: Record<string, unknown> = square(12)) =>
      areaOf(tile, area, job).findings.map((one) => `${one.severity} ${one.rule}`);
    expect(rules({ membrane: 'heated-mat' })).toEqual(
      expect.arrayContaining(['warn safety.heat', 'warn heat.protect']),
    );
    const stone = { ...square(12), material: 'stone', thicknessMm: 20 };
    expect(rules({ surface: 'wall', substrate: 'drywall' }, {}, stone)).toContain('stop substrate.wall-limits');
    expect(rules({ surface: 'wall', substrate: 'cement-board' })).toContain('note substrate.wall-limits');
    expect(rules({}, { crew: { temperatureC: 2 } })).toEqual(
      expect.arrayContaining(['warn time.temperature', 'note time.cold']),
    );
    expect(rules({}, { crew: { temperatureC: 35 } })).toContain('warn time.temperature');
  });
  test('wind, sun and heat shorten how far to spread', () => {
    const ahead = (crew: Record<string, unknown>, area = {}) =>
      areaOf(square(12), area, { crew: { minPerTile: 2, temperatureC: 23, ...crew } }).spreadAhead;
    expect(ahead({})).toBe(10);
    expect(ahead({ wind: 'breeze' })).toBe(7);
    expect(ahead({ wind: 'windy' })).toBe(5);
    expect(ahead({}, { sun: true })).toBe(5);
    expect(ahead({ temperatureC: 33 })).toBe(6);
  });
  test('every kind of place and tile gives a whole sheet', () => {
    for (const standards of ['north-america', 'iso-en'])
      for (const exposure of exposures)
        for (const surface of surfaces)
          for (const material of materials) {
            const plan = areaOf({ ...square(12), material }, { exposure, surface }, { standards });
            expect(plan.minCoverage).toBeGreaterThanOrEqual(0.65);
            expect(plan.bags.plan).toBeGreaterThan(0);
            expect(plan.minJointMm).toBeGreaterThan(0);
            expect(plan.maxLippageMm).toBeGreaterThan(0);
            expect(JSON.stringify(plan)).not.toMatch(/NaN|Infinity/);
          }
    for (const membrane of membranes)
      for (const substrate of substrates)
        expect(areaOf(square(12), { membrane, substrate }).layers.length).toBeGreaterThan(0);
  });
  test('a judgement is whole for every kind', () => {
    for (const kind of ['tile', 'stone', 'glass', 'panel'])
      for (const exposure of exposures)
        for (const standards of ['north-america', 'iso-en'])
          expect(judged({ kind, exposure, standards, pulls: [{ coverage: 1 }] }).verdict).toBe('not-enough');
  });
});
