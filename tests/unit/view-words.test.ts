import { bedTable } from '@sim/view/words/bed-table.ts';
import { describeBed, describeSection, stateShares } from '@sim/view/words/describe-bed.ts';
import { profileOf } from '@sim/view/section/profile.ts';
import { formatForce, formatPressure, formatSmallArea, formatSmallVolume } from '@sim/units/mechanics.ts';
import { describe, expect, test } from 'vitest';

import { drawnFrame, plainResult } from './view-frames.ts';

const frame = drawnFrame(['bbbb', 'bots', 'oooo']);

describe('words for a bed', () => {
  test('shares are of the back, each cell once', () => {
    const shares = stateShares(drawnFrame(['.bbj', '.ot.', '.bs.']));
    expect(shares).toEqual({ bonded: 3 / 6, open: 1 / 6, trapped: 1 / 6, skinned: 1 / 6 });
  });

  test('says coverage first, the void in the units asked for, and the weak corner by name', () => {
    const said = describeBed(plainResult(), frame, 'imperial');
    expect(said[0]).toContain('50 %');
    // 645.16 mm² is one square inch and 16387.064 mm³ one cubic inch, exactly (yard and pound agreement, 1959).
    expect(said.join(' ')).toContain('1 in²');
    expect(said.join(' ')).toContain('1 in³');
    expect(said.join(' ')).toContain('far left');
    expect(describeBed(plainResult(), frame, 'metric').join(' ')).toContain('6.5 cm²');
  });

  test('before the tile is laid it speaks of the comb alone', () => {
    const comb = drawnFrame(['....'], { action: -1, tileHeightMm: NaN });
    comb.mortarMm.fill(5.5);
    const said = describeBed(null, comb, 'metric');
    expect(said).toHaveLength(1);
    expect(said[0]).toContain('5.5 mm');
  });

  test('a sentence never holds a broken number', () => {
    for (const system of ['imperial', 'metric'] as const) {
      const said = [
        ...describeBed(plainResult({ pockets: [{ xMm: 0, yMm: 0, areaMm2: 4, gaugePa: 900 }] }), frame, system),
        ...describeSection(profileOf(frame, { along: 'length', atMm: 0 }), system),
        ...bedTable(plainResult(), frame, system).map((row) => row.value),
      ].join('\n');
      expect(said).not.toMatch(/NaN|undefined|Infinity|null/);
    }
  });

  test('the table holds every figure once', () => {
    const rows = bedTable(plainResult(), frame, 'metric');
    expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
    expect(rows.find((row) => row.id === 'tilt')?.value).toBe('0.00°, −0.25°');
  });

  test('forces, pressures, small areas and volumes in both systems', () => {
    // 4.4482216152605 N to the pound-force; 6894.757 Pa to the psi (NIST SP 811, table B.8).
    expect(formatForce(44.482216152605, 'imperial')).toBe('10 lbf');
    expect(formatForce(3.25, 'metric')).toBe('3.3 N');
    expect(formatPressure(6894.757, 'imperial')).toBe('1 psi');
    expect(formatSmallArea(250, 'metric')).toBe('2.5 cm²');
    expect(formatSmallVolume(5200, 'metric')).toBe('5.2 cm³');
  });
});
