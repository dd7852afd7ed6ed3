import { describe, expect, test } from 'vitest';

import { FT2, IN, IN2 } from './rules-checks/check.ts';
import { alike, areaOf, judged, square } from './rules-checks/jobs.ts';

/** Cases of failed and doubtful floors, restated as facts; the answers come from the trade sources. */
describe('pass or fail', () => {
  test('13 in floor half loose, most tiles under 40 %, a few near full: fails, and coverage is not the only cause', () => {
    const found = judged({ pulls: [{ coverage: 0.35 }, { coverage: 0.38 }, { coverage: 0.3 }, { coverage: 0.99 }] });
    expect(found.verdict).toBe('fail');
    expect(found.findings.some((one) => one.says.includes('not the only cause'))).toBe(true);
  });
  test('a strip bare along two edges: passes the number, fails the edges, fails the wet', () => {
    const tile = {
      coverage: 0.918,
      voids: [
        { areaMm2: 0.5 * 12 * IN2, toCornerMm: 0, toEdgeMm: 0 },
        { areaMm2: 0.5 * 11.5 * IN2, toCornerMm: 0, toEdgeMm: 0 },
      ],
    };
    const dry = judged({ pulls: alike(3, tile) });
    expect(dry.limits.find((one) => one.name === 'coverage')?.holds).toBe(true);
    expect(dry.limits.find((one) => one.name === 'edge-support')?.holds).toBe(false);
    expect(dry.verdict).toBe('fail');
    const wet = judged({ exposure: 'interior-wet', pulls: alike(3, tile) });
    expect(wet.limits.find((one) => one.name === 'coverage')?.holds).toBe(false);
    expect(wet.verdict).toBe('fail');
  });
  test('18 in tile on dabs, 34 hollow of about 327: fails, cause dabs', () => {
    const found = judged({ pulls: alike(3, { coverage: 0.25 }), signs: { ridges: 'dabs' } });
    expect(found.verdict).toBe('fail');
    expect(found.causes[0]?.name).toBe('dabs');
    expect(34 / areaOf(square(18), { areaM2: 735 * FT2 }).tiles).toBeCloseTo(0.1, 1);
  });
  test('glass on 3/4 in spots: fails twice, on contact and on a bed three times too thick', () => {
    const found = judged({
      kind: 'glass',
      bedMm: 0.75 * IN,
      pulls: alike(3, { coverage: 0.4 }),
      signs: { ridges: 'dabs' },
    });
    expect(found.verdict).toBe('fail');
    const failed = found.limits.filter((one) => !one.holds && !one.advice).map((one) => one.name);
    expect(failed).toEqual(['coverage', 'bed-most']);
    const bed = found.limits.find((one) => one.name === 'bed-most');
    expect((bed?.found ?? 0) / (bed?.required ?? 1)).toBeCloseTo(3, 9);
  });
  test('3/8 in stone dry at 92 % fails; 3/4 in stone dry at 85 % passes; the same wet fails', () => {
    const thin = { coverage: 0.92, voids: [{ areaMm2: 1.5 * IN2, toCornerMm: 150, toEdgeMm: 150 }] };
    const thick = { coverage: 0.85, voids: [{ areaMm2: 3 * IN2, toCornerMm: 3 * IN, toEdgeMm: 3 * IN }] };
    const stone = (thicknessMm: number, tile: Record<string, unknown>, exposure = 'interior-dry') =>
      judged({ kind: 'stone', material: 'stone', thicknessMm, exposure, pulls: alike(3, tile) }).verdict;
    expect(stone(0.375 * IN, thin)).toBe('fail');
    expect(stone(0.75 * IN, thick)).toBe('pass');
    expect(stone(0.75 * IN, thick, 'interior-wet')).toBe('fail');
    expect(stone(0.375 * IN, { ...thin, coverage: 0.95 })).toBe('pass');
    expect(stone(0.375 * IN, { coverage: 0.96, voids: [{ areaMm2: 2.1 * IN2, toCornerMm: 150 }] })).toBe('fail');
    expect(stone(0.375 * IN, { coverage: 0.96, voids: [{ areaMm2: 400, toCornerMm: 1.9 * IN }] })).toBe('fail');
    expect(stone(0.75 * IN, { coverage: 0.9, voids: [{ areaMm2: 4.1 * IN2, toCornerMm: 150 }] })).toBe('fail');
    expect(stone(0.7 * IN, { coverage: 0.9 })).toBe('fail');
  });
  test('a single tile: enough to fail, never enough to pass', () => {
    expect(judged({ exposure: 'interior-wet', pulls: [{ coverage: 0.96 }] }).verdict).toBe('not-enough');
    expect(judged({ exposure: 'interior-wet', pulls: [{ coverage: 0.94 }] }).verdict).toBe('fail');
    expect(judged({ pulls: [] }).verdict).toBe('not-enough');
  });
  test('a coat on the back that never met the bed is no contact', () => {
    const found = judged({ pulls: alike(3, { coverage: 1, backCoatOnly: true }) });
    expect(found.verdict).toBe('fail');
    expect(found.limits[0]?.found).toBe(0);
  });
  test('the average decides, and a poor tile behind it is named', () => {
    const found = judged({ pulls: [{ coverage: 0.95 }, { coverage: 0.95 }, { coverage: 0.55 }] });
    expect(found.verdict).toBe('pass');
    expect(found.findings.some((one) => one.rule === 'void.support' && one.severity === 'warn')).toBe(true);
    expect(judged({ pulls: [{ coverage: 0.9 }, { coverage: 0.9 }, { coverage: 0.59 }] }).verdict).toBe('fail');
    expect(judged({ pulls: [{ coverage: 0.9 }, { coverage: 0.9 }, { coverage: 0.6 }] }).verdict).toBe('pass');
  });
  test('three good ones say little, in words', () => {
    const found = judged({ pulls: alike(3, { coverage: 0.9 }) });
    expect(found.stillBad).toBeCloseTo(1 - 0.05 ** (1 / 3), 12);
    expect(found.says).toContain('63 %');
  });
});

describe('the likely cause', () => {
  const cause = (signs: Record<string, unknown>, more: Record<string, unknown> = {}) =>
    judged({ pulls: alike(3, { coverage: 0.05 }), signs, ...more }).causes.map((one) => one.name);
  test('plank loose, ridges intact on the slab, backs clean: skinned or never worked in, not the notch', () => {
    const found = cause({ mortarOn: 'floor', ridges: 'standing' });
    expect(['skinned', 'not-embedded']).toContain(found[0]);
    expect(found).not.toContain('too-little-mortar');
    const actions = judged({ pulls: alike(3, { coverage: 0.05 }), signs: { mortarOn: 'floor', ridges: 'standing' } })
      .causes[0]?.action;
    for (const word of ['Spread less', 'dampen', 'collapse', 'lift', 'clips']) expect(actions).toContain(word);
    expect(cause({ mortarOn: 'floor', ridges: 'standing', skin: false })[0]).toBe('not-embedded');
    expect(cause({ mortarOn: 'floor', ridges: 'standing', skin: true })[0]).toBe('skinned');
  });
  test('only the cut tiles come up clean: the wet back, not the notch', () => {
    expect(cause({ cutTilesOnly: true })[0]).toBe('wet-back');
    expect(cause({ cutTilesOnly: true, mortarOn: 'floor', ridges: 'crushed' })[0]).toBe('wet-back');
  });
  test('mortar on the tile, slab clean: sealed or dirty base; test with drops of water', () => {
    const found = judged({ pulls: alike(3, { coverage: 0.95 }), signs: { mortarOn: 'tile' } });
    expect(found.causes[0]?.name).toBe('sealed-base');
    expect(found.causes[0]?.action).toContain('drops of water');
    expect(found.causes[0]?.says).toContain('not the cause');
  });
  test('a straight crack over a seam: the board was not bedded', () => {
    expect(cause({ crackOverSeam: true })[0]).toBe('unbedded-board');
  });
  test('ridges crushed and the back still bare: too little mortar', () => {
    expect(cause({ mortarOn: 'both', ridges: 'crushed' })).toEqual(['too-little-mortar']);
  });
  test('swirls and powder are named', () => {
    expect(cause({ ridges: 'swirled' })[0]).toBe('swirls');
    expect(cause({ powder: true })[0]).toBe('powder');
  });
  test('no signs, no causes', () => {
    expect(cause({})).toEqual([]);
  });
});

describe('sound', () => {
  test('a hollow floor that was well bedded: lift before judging', () => {
    const heard = judged({ hollowSound: true, overMembrane: true, pulls: [] });
    expect(heard.verdict).toBe('not-enough');
    expect(heard.says).toContain('lift');
    expect(heard.findings.some((one) => one.says.includes('lift before judging'))).toBe(true);
    const lifted = judged({ hollowSound: true, overMembrane: true, pulls: alike(3, { coverage: 0.9 }) });
    expect(lifted.verdict).toBe('pass');
    expect(lifted.findings.some((one) => one.says.includes('well bedded'))).toBe(true);
  });
  test('a floor that rings full is not judged by that either', () => {
    expect(judged({ hollowSound: false, pulls: [] }).verdict).toBe('not-enough');
  });
});
