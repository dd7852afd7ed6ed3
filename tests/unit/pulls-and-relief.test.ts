import { describe, expect, it } from 'vitest';

import { valueOf } from '@sim/rules/rulebook.ts';
import { inches } from '@sim/units/length.ts';
import { cornerBack, spreadBack } from '@site/components/drawings/two-pulls.ts';
import { pulls } from '@site/lessons/worked/pulls.ts';
import { relief } from '@site/lessons/worked/relief.ts';

const edge = inches(12);
const near = valueOf('void.near-edge', 'distance');

describe('two backs of one share', () => {
  it('bare the same area: 16 % of 144 in² is 23 in²', () => {
    const spread = spreadBack(edge, 0.84, near);
    const bare = spread.voids.reduce((sum, one) => sum + Math.PI * one.r ** 2, 0);
    expect(bare).toBeCloseTo(0.16 * edge * edge, 6);
    expect(cornerBack(edge, 0.84).largestMm2).toBeCloseTo(0.16 * edge * edge, 6);
  });
  it('one keeps clear of the edges with no large void, the other breaks both practices', () => {
    const spread = spreadBack(edge, 0.84, near);
    spread.voids.forEach((one) => expect(Math.min(one.x, one.y) - one.r).toBeGreaterThanOrEqual(near - 1e-9));
    // The voids are apart: the largest single one is one disc.
    const [a, b] = spread.voids;
    expect(b!.x - a!.x).toBeGreaterThan(2 * a!.r);
    expect(spread.largestMm2).toBeLessThan(valueOf('void.tile', 'area'));
    expect(cornerBack(edge, 0.84).largestMm2).toBeGreaterThan(valueOf('void.tile', 'area'));
  });
  it('the film of a hundred dots reads both within a few points', () => {
    expect(Math.abs(spreadBack(edge, 0.84, near).counted - 84)).toBeLessThanOrEqual(1);
    expect(Math.abs(cornerBack(edge, 0.84).counted - 84)).toBeLessThanOrEqual(3);
  });
});

describe('worked examples', () => {
  it('three tiles: 91, 88 and 64 average 81 %: over the dry number, under the wet one', () => {
    expect(pulls.mean).toBeCloseTo(0.81, 12);
    expect(pulls.mean).toBeGreaterThan(valueOf('coverage.dry', 'share'));
    expect(pulls.mean).toBeLessThan(valueOf('coverage.wet', 'share'));
  });
  // A practitioner's case: each mm of mean relief takes 1 L/m², about 30 % of a 3.4 mm bed.
  it('a millimetre of relief eats about 30 % of a quarter by three-eighths bed', () => {
    expect(relief.bedMm.metric).toBeCloseTo(3.37, 2);
    expect(relief.reliefMm.metric).toBeCloseTo(1, 12);
    expect(relief.lostShare.metric).toBeCloseTo(0.3, 2);
    expect(relief.reliefMm.imperial).toBeCloseTo(inches(1 / 24), 12); // two thirds of 1/16 in
    // The lesson says that what is left is a hair under the least bed: a tenth of a millimetre at most.
    for (const leftMm of Object.values(relief.leftMm)) {
      expect(leftMm).toBeLessThan(valueOf('bed.least', 'bed'));
      expect(leftMm).toBeGreaterThan(valueOf('bed.least', 'bed') - 0.1);
    }
  });
});
