import { describe, expect, test } from 'vitest';

import { sheetNotches } from '@sim/estimate/layers.ts';
import { areaOf, oblong, square } from './rules-checks/jobs.ts';

/**
 * What the trade takes (common practice, no published source). The choice comes from a mechanism; each row must come
 * out of it, for every class of edge and on a floor measured or not.
 */
const wet = { exposure: 'interior-wet' };
const small = '1/4 × 1/4 in square';
const middle = '1/4 × 3/8 in square';
const large = ['1/2 × 1/2 in square', '1/4 × 1/2 in square'];
const tiny = ['1/4 × 3/16 in V', '3/16 × 3/16 in square'];

const edges = ['rectified', 'calibrated', 'natural'] as const;
const floors = [{}, { flatnessMm: null }] as const;

describe.each(edges)('%s tile', (edge) => {
  describe.each(floors)('on a floor %o', (floor) => {
    const plan = (tile: Record<string, unknown>, area: Record<string, unknown> = {}) =>
      areaOf({ edge, ...tile }, { ...floor, ...area });
    const labels = (tile: Record<string, unknown>, area = {}) => {
      const found = plan(tile, area);
      return [found.notch, ...found.alternatives].map((one) => one.label);
    };

    test.each([
      ['penny rounds', square(3 / 4)],
      ['small hex', square(1)],
    ])('%s, dry: small V, 3/16 square, or 1/4 flattened', (_, tile) => {
      const found = plan({ ...tile, thicknessMm: 6 });
      expect([...tiny, small]).toContain(found.notch.label);
      expect(found.notch.label !== small || found.flattenRidges).toBe(true);
      for (const label of labels({ ...tile, thicknessMm: 6 })) expect([...tiny, small]).toContain(label);
      expect(labels({ ...tile, thicknessMm: 6 })).toEqual(expect.arrayContaining([...tiny, small]));
    });

    test.each([3 / 4, 1, 2])('any mosaic where 95 %% is required (%d in): 1/4 × 1/4 flattened', (inches) => {
      const found = plan({ ...square(inches), thicknessMm: 6 }, wet);
      expect(found.minCoverage).toBe(0.95);
      expect(found.notch.label).toBe(small);
      expect(found.flattenRidges).toBe(true);
      expect(found.alternatives.some((one) => one.shape === 'v')).toBe(false);
    });

    test('2 × 2 sheets: 1/4 × 1/4', () => {
      expect(plan(square(2)).notch.label).toBe(small);
      expect(plan(square(2)).flattenRidges).toBe(false);
    });

    test.each([
      ['2 × 2', square(2)],
      ['1 × 6', oblong(6, 1)],
      ['1/2 × 12', oblong(12, 0.5)],
    ])('glass %s: 1/4 × 1/4 flattened, white mortar made for glass', (_, tile) => {
      const found = plan({ ...tile, material: 'glass', thicknessMm: 8 });
      expect(found.notch.label).toBe(small);
      expect(found.flattenRidges).toBe(true);
      expect(found.mortarColour).toBe('white-for-glass');
    });

    test.each([
      ['3 × 6', oblong(6, 3)],
      ['4 1/4', square(4.25)],
      ['6 × 6', square(6)],
      ['4 × 8', oblong(8, 4)],
    ])('%s: 1/4 × 1/4', (_, tile) => {
      for (const material of ['porcelain', 'ceramic']) {
        expect(plan({ ...tile, material }).notch.label).toBe(small);
        expect(plan({ ...tile, material }, { surface: 'wall', substrate: 'cement-board' }).notch.label).toBe(small);
      }
    });

    test.each([12, 13, 16])('%d in square: 1/4 wide × 3/8 deep', (inches) => {
      for (const material of ['porcelain', 'ceramic']) {
        const found = plan({ ...square(inches), material });
        expect(found.notch.label).toBe(middle);
        expect(found.butterBack).toBe(inches > 12);
      }
    });

    test.each([
      ['12 × 24', oblong(24, 12)],
      ['24 × 24', square(24)],
      ['6 × 36', oblong(36, 6)],
      ['8 × 36', oblong(36, 8)],
    ])('%s: 1/2 × 1/2 or 1/4 × 1/2, back buttered', (_, tile) => {
      for (const material of ['porcelain', 'ceramic']) {
        const found = plan({ ...tile, material });
        expect(large).toContain(found.notch.label);
        expect(labels({ ...tile, material })).toEqual(expect.arrayContaining(large));
        expect(found.butterBack).toBe(true);
      }
    });

    test.each([
      ['60 × 12', oblong(60, 12)],
      ['72 × 9', oblong(72, 9)],
      ['60 × 30', oblong(60, 30)],
    ])('%s, over 48 in: slanted, both faces combed', (_, tile) => {
      const found = plan(tile);
      expect(found.notch.shape).toBe('slanted');
      expect(found.butterHow).toBe('combed');
    });
  });
});

describe('layers under the tile', () => {
  test('thin bonded sheet, maker silent: 1/8 × 1/8 square to 1/4 × 3/16 V', () => {
    const accepted = ['1/8 × 1/8 in square', '3/16 × 5/32 in V', '1/4 × 3/16 in V', '3/16 × 3/16 in square'];
    const found = areaOf(square(12), { membrane: 'sheet-waterproofing' }).layers.find(
      (layer) => layer.name === 'under-sheet',
    );
    expect(accepted).toContain(found?.notch?.label);
    expect(sheetNotches('north-america').map((one) => one.label)).toEqual(
      expect.arrayContaining(['1/8 × 1/8 in square', '1/4 × 3/16 in V']),
    );
    expect(sheetNotches('north-america').every((one) => accepted.includes(one.label))).toBe(true);
  });
  test('cement board over a wood floor: 1/4 × 1/4 under the board', () => {
    const plan = areaOf(square(12), { membrane: 'backer-board', substrate: 'plywood' });
    expect(plan.layers.find((layer) => layer.name === 'under-board')?.notch?.label).toBe(small);
  });
});

test('the maker’s written notch wins, is reported, and what we would have taken is kept', () => {
  const notch = { shape: 'square', widthMm: 6.35, depthMm: 9.525, toothMm: 6.35 };
  const plan = areaOf(square(24), {}, { instructions: { notch } });
  expect(plan.notch.label).toBe(middle);
  expect(large).toContain(plan.overridden?.label);
  const said = plan.findings.filter((one) => one.rule === 'coverage.maker');
  expect(said).toHaveLength(1);
  expect(said[0]?.says).toContain('takes the place');
  expect(plan.findings.some((one) => one.rule === 'bed.need' && one.severity === 'warn')).toBe(true);
});

test('with millimetre trowels the same mechanism takes 6, 8 and 12 mm', () => {
  const label = (mm: number) =>
    areaOf({ lengthMm: mm, widthMm: mm, edge: 'rectified' }, {}, { standards: 'iso-en' }).notch.label;
  expect([label(150), label(300), label(600)]).toEqual(['6 × 6 mm square', '8 × 8 mm square', '12 × 12 mm square']);
});
