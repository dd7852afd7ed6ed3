import { describe, expect, test } from 'vitest';

import { bedNeed } from '@sim/estimate/bed-need.ts';
import { chooseNotch, judgeNotch } from '@sim/estimate/choose-notch.ts';
import { notchesFor } from '@sim/estimate/notches.ts';
import { areaOf, jobOf, square } from './rules-checks/jobs.ts';

describe('the choice among trowels at hand', () => {
  test('none will do: the nearest is named, and the sheet stops', () => {
    const hand = { trowelsAtHand: [{ shape: 'square', widthMm: 3.175, depthMm: 3.175 }] };
    const plan = areaOf(square(24), {}, hand);
    expect(plan.findings.some((one) => one.severity === 'stop' && one.says.startsWith('None of the trowels'))).toBe(
      true,
    );
  });
  test('only a bigger one: taken, with a word on squeeze-up', () => {
    const hand = { trowelsAtHand: [{ shape: 'square', widthMm: 12.7, depthMm: 12.7 }] };
    const plan = areaOf(square(6), {}, hand);
    expect(plan.notch.label).toBe('1/2 × 1/2 in square');
    expect(plan.findings.some((one) => one.severity === 'stop')).toBe(false);
    expect(plan.findings.some((one) => one.rule === 'bed.need' && one.severity === 'warn')).toBe(true);
  });
  test('a list of one is judged as the whole tray is', () => {
    const area = jobOf(square(12)).areas[0];
    if (!area) throw new Error('no area');
    const question = {
      area,
      standards: 'north-america' as const,
      need: bedNeed(area, 'north-america'),
      minCoverage: 0.8,
      mostMm: 6.35,
    };
    for (const one of notchesFor('north-america', null)) {
      const alone = chooseNotch(question, [one]);
      expect(alone.pick?.refusal ?? null).toEqual(alone.pick ? judgeNotch(question, one).refusal : null);
    }
  });
});
