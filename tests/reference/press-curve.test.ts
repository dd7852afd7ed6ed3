import { describe, expect, it } from 'vitest';

import { pressCurve, pushFor, ridgesOf } from '@site/components/drawings/press-curve.ts';
import { notchById } from '@site/lessons/worked/notch.ts';
import { stroke } from '@site/lessons/worked/stroke.ts';
import { airWay } from '@site/lessons/worked/air-way.ts';
import { valueOf } from '@sim/rules/rulebook.ts';
import { inches } from '@sim/units/length.ts';

// Square notch, notch and tooth alike, at 60°: push over yield stress 1.5 φ + 2.31/2 φ³·… tabulated for φ 0.5 … 1
// (plastic strip with its end term, worked apart from this code).
const lab = ridgesOf({ shape: 'square', widthMm: 6, depthMm: 6, toothMm: 6, angleDeg: 60, wearMm: 0 });

describe('what pressing costs', () => {
  it.each([
    [0.5, 1.04],
    [0.6, 1.4],
    [0.7, 1.84],
    [0.8, 2.38],
    [0.9, 3.03],
    [0.95, 3.4],
    [1, 3.81],
  ])('coverage %d takes %d yield stresses', (coverage, times) => {
    expect(pushFor(coverage, lab, 1, 1000)).toBeCloseTo(times, 1);
  });

  // A 600 × 600 mm tile on mortar of 500 Pa needs about 690 N.
  it('needs about 690 N for a 600 mm tile', () => {
    expect(Math.abs(pushFor(1, lab, 500, 600) - 690)).toBeLessThan(7);
  });

  it('rises ever steeper, and four times as steep for a tile twice as long', () => {
    const small = pressCurve(lab, 450, 300).points;
    const large = pressCurve(lab, 450, 600).points;
    const steps = small.slice(1).map((point, i) => point.pushN - (small[i]?.pushN ?? 0));
    steps.slice(1).forEach((step, i) => expect(step).toBeGreaterThan(steps[i] ?? 0));
    large.forEach((point, i) => expect(point.pushN / (small[i]?.pushN ?? 1)).toBeCloseTo(4, 9));
  });
});

it('a large tile’s last points cost more than two hands give, as the lesson on setting says', () => {
  const ridges = ridgesOf({ ...notchById('1-4-3-8-in-square'), angleDeg: 60, wearMm: 0 });
  const last = pressCurve(ridges, 450, inches(24)).points.at(-1);
  expect(last?.pushN ?? 0).toBeGreaterThan(valueOf('model.pressing', 'most'));
});

describe('worked examples of combing and setting', () => {
  it('one light stroke across by the width of the notch adds half of the pitch (+ s/P), along 0.15 of that', () => {
    expect(stroke.gainShare).toBeCloseTo(0.5, 12);
    // dw/ds along at a tenth of the plastic load is 0.15 (tabulated closed form).
    expect(stroke.alongShare).toBeCloseTo(0.5 * 0.15, 2);
  });
  it('a person of 75 kg on a foot-square tile shrinks shut air by 7 % (Boyle)', () => {
    expect(stroke.pocketShare).toBeCloseTo(7.91 / (101.3 + 7.91), 2);
  });
  it('a half-inch strip bare on two sides leaves 11.5² of 12²', () => {
    expect(airWay.bestShare.imperial).toBeCloseTo((11.5 * 11.5) / 144, 12);
    expect(airWay.shortWayMm.imperial).toBe(6 * 25.4);
    expect(airWay.bestShare.metric).toBeCloseTo((288 * 288) / (300 * 300), 12);
    expect(airWay.shortWayMm.metric).toBe(150);
  });
});
