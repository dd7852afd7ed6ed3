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
