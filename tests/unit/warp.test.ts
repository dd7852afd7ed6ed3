import { describe, expect, it } from 'vitest';

import { valueOf } from '@sim/rules/rulebook.ts';
import { inches } from '@sim/units/length.ts';
import { readWarp } from '@site/islands/figures/warp.ts';
import { drawWarp, UNITS_PER_MM } from '@site/islands/figures/warp-drawing.ts';
import { bow } from '@site/lessons/worked/bow.ts';

const rules = {
  warpShare: valueOf('warp.rectified', 'share'),
  warpMostMm: valueOf('warp.rectified', 'most'),
  narrowFromMm: valueOf('lippage.narrow', 'from'),
  wideFromMm: valueOf('lippage.wide', 'from'),
  narrowLipMm: valueOf('lippage.narrow', 'lip'),
  wideLipMm: valueOf('lippage.wide', 'lip'),
  offsetSideMm: valueOf('offset.third', 'side'),
  offsetShare: valueOf('offset.third', 'share'),
  jointRectifiedMm: valueOf('joint.running-bond', 'rectified'),
};
const plank = { lengthMm: inches(24), bowMm: inches(1 / 32), offset: 1 / 3, jointMm: inches(1 / 8) };

describe('bow, joint and lippage', () => {
  // Consultant's answers citing ANSI A108.02: 12 × 24 in, warped 1/32 in: joint 5/32 in, lippage 1/32 + 1/32 = 1/16 in.
  it('agrees with the consultant’s worked answers', () => {
    const reading = readWarp(plank, rules);
    expect(reading.jointNeededMm).toBeCloseTo(inches(5 / 32), 9);
    expect(reading.allowedMm).toBeCloseTo(inches(1 / 16), 9);
    expect(reading.jointHolds).toBe(false);
    expect(readWarp({ ...plank, jointMm: inches(3 / 16) }, rules).jointHolds).toBe(true);
  });

  // Example of the TCNA on A137.1: 8 in edge 0.032 in, 24 in edge capped at 0.05 in.
  it('takes the lesser of share and cap for the bow', () => {
    expect(readWarp({ ...plank, lengthMm: inches(8) }, rules).bowLimitMm).toBeCloseTo(inches(0.032), 9);
    expect(readWarp(plank, rules).bowLimitMm).toBeCloseTo(inches(0.05), 9);
  });

  it('holds half bond of long plank back, and lets short tile have it', () => {
    expect(readWarp({ ...plank, offset: 0.5 }, rules).offsetHolds).toBe(false);
    expect(readWarp({ ...plank, offset: 1 / 3 }, rules).offsetHolds).toBe(true);
    expect(readWarp({ ...plank, lengthMm: inches(12), offset: 0.5 }, rules).offsetHolds).toBe(true);
  });

  it('allows the wide figure from a quarter-inch joint', () => {
    expect(readWarp({ ...plank, jointMm: inches(1 / 4) }, rules).allowedMm).toBeCloseTo(inches(3 / 32), 9);
  });

  it('draws the step as high as it is computed', () => {
    const { step } = drawWarp({ bowMm: 1.5, offset: 1 / 3 });
    expect((step!.y1 - step!.y0) / UNITS_PER_MM).toBeCloseTo((8 / 9) * 1.5, 6);
    expect(drawWarp({ bowMm: 1.5, offset: 0 }).step).toBeNull();
  });

  it('works Sam’s planks by hand: cap 0.05 in, joint 5/32, allowed 1/16, half leaves 1/32', () => {
    expect(bow.limitMm.imperial).toBeCloseTo(inches(0.05), 9);
    expect(bow.jointMm.imperial).toBeCloseTo(inches(5 / 32), 9);
    expect(bow.allowedMm.imperial).toBeCloseTo(inches(1 / 16), 9);
    expect(bow.leftHalfMm.imperial).toBeCloseTo(inches(1 / 32), 9);
    expect(bow.thirdMm.imperial).toBeCloseTo(inches(1 / 36), 9);
    // The metric reader's plank is 1.2 m long and measured 1 mm: 4.8 mm by the share, so the cap of 1.27 mm rules.
    expect(bow.byShareMm.metric).toBeCloseTo(4.8, 9);
    expect(bow.limitMm.metric).toBeCloseTo(1.27, 9);
    expect(bow.jointMm.metric).toBeCloseTo(3.175 + 1, 9);
    expect(bow.thirdMm.metric).toBeCloseTo(8 / 9, 9);
    expect(bow.measuredMm.metric).toBeLessThan(bow.limitMm.metric);
  });
});
