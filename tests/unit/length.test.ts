import { describe, expect, test } from 'vitest';

import { asFraction } from '@sim/units/fraction.ts';
import { formatGap, formatLength } from '@sim/units/format.ts';
import { inches } from '@sim/units/length.ts';
import { formatPressure } from '@sim/units/mechanics.ts';
import { parseLength } from '@sim/units/parse-length.ts';

describe('lengths', () => {
  test('print as the trade writes them', () => {
    expect(asFraction(inches(0.25))).toBe('1/4');
    expect(asFraction(inches(1.5))).toBe('1 1/2');
    expect(asFraction(inches(12))).toBe('12');
    expect(formatLength(inches(3 / 16), 'imperial')).toBe('3/16 in');
    expect(formatLength(6.35, 'metric')).toBe('6.4 mm');
    // A tape tells a tile's side to the millimetre, and what a rule keeps clear of an edge.
    expect(formatLength(inches(12), 'metric')).toBe('305 mm');
    expect(formatLength(inches(2), 'metric')).toBe('51 mm');
    expect(formatLength(inches(1), 'metric')).toBe('25.4 mm');
  });
  test('less than nothing has a minus sign, and what rounds to nothing has no sign', () => {
    expect(formatLength(inches(-3 / 16), 'imperial')).toBe('−3/16 in');
    expect(formatLength(-6.35, 'metric')).toBe('−6.4 mm');
    expect(formatGap(inches(-0.04), 'imperial')).toBe('−0.040 in');
    expect(formatGap(-1.5, 'metric')).toBe('−1.5 mm');
    expect(formatGap(-0.001, 'metric')).toBe('0 mm');
    expect(formatGap(-0.001, 'imperial')).toBe('0.000 in');
    expect(formatPressure(-2000, 'metric')).toBe('−2 kPa');
  });
  test('are read as people type them', () => {
    expect(parseLength('1/4', 'in')).toBeCloseTo(6.35, 10);
    expect(parseLength('1 1/2 in', 'mm')).toBeCloseTo(38.1, 10);
    expect(parseLength('30,5 cm', 'in')).toBeCloseTo(305, 10);
    expect(parseLength('2 ft', 'mm')).toBeCloseTo(609.6, 10);
    expect(parseLength('-3', 'mm')).toBe(-3);
    for (const [text, wide] of [
      ['.125', 0.125],
      ['3/16 inch', 3 / 16],
      ['3/16 inches', 3 / 16],
      ['⅜', 3 / 8],
      ['1½"', 1.5],
      ['6 feet', 72],
      ["6'", 72],
      [`6'6"`, 78],
      [`12' 6 1/2"`, 150.5],
      ['5 ft 3', 63],
      ['10-3/8 in', 10.375],
      ["3''", 3],
    ] as const)
      expect(parseLength(text, 'in'), text).toBeCloseTo(inches(wide), 8);
    expect(parseLength('3 metres', 'in')).toBe(3000);
    for (const bad of [`6'13"`, `6' 4 ft`, '1,200', '6 feets', "5' 3 m"])
      expect(parseLength(bad, 'in'), bad).toBeNull();
    for (const bad of ['', 'abc', '1/0', '1/', '--3', '1 1', 'NaN', '1e3']) expect(parseLength(bad, 'mm')).toBeNull();
  });
});
