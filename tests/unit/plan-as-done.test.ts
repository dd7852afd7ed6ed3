import { describe, expect, it } from 'vitest';

import { areaOf, square } from '../reference/rules-checks/jobs.ts';

/** The sheet's answer to work that is done otherwise than it asks. */
const done = (technique: object) => areaOf(square(13), { technique });

describe('a prediction for the work as it is done', () => {
  it('is the sheet’s own where nothing departs from it', () => {
    const plain = areaOf(square(13));
    expect(done({ comb: 'straight', press: 'usual' }).predicted).toEqual(plain.predicted);
    expect(plain.findings.some((one) => one.says.startsWith('Done like that'))).toBe(false);
  });

  it('takes a light hand where the work departs and the push is not told, and no movement on swirls, and says so', () => {
    const half = done({ comb: 'swirl' });
    expect(half.predicted).toEqual(done({ comb: 'swirl', press: 'light', moveMm: 0 }).predicted);
    expect(half.findings.filter((one) => one.rule === 'model.untold')).toHaveLength(2);
    const told = done({ comb: 'swirl', press: 'usual', moveMm: 3 });
    expect(told.predicted.median).toBeGreaterThan(half.predicted.median);
    expect(told.findings.some((one) => one.rule === 'model.untold')).toBe(false);
    expect(done({ moveMm: 0 }).predicted).toEqual(done({ moveMm: 0, press: 'light' }).predicted);
    // A coat left out says nothing of the hand.
    expect(done({ bareBack: true }).predicted).toEqual(done({ bareBack: true, press: 'usual' }).predicted);
  });

  it.each([
    [{ press: 'light' }, 'model.pressing'],
    [{ comb: 'swirl' }, 'comb.straight'],
    [{ moveMm: 0 }, 'set.travel'],
  ])('%o lowers it and is named', (technique, rule) => {
    const plan = done({ bareBack: true, ...technique });
    expect(plan.predicted.median).toBeLessThan(done({ bareBack: true }).predicted.median);
    expect(plan.findings.some((one) => one.rule === rule && one.severity === 'warn')).toBe(true);
    expect(plan.findings.some((one) => one.says.startsWith('Done like that'))).toBe(true);
  });
});
