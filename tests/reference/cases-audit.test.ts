import { describe, expect, test } from 'vitest';

import { holds, tell, type CaseRow } from './rules-checks/case-row.ts';
import { casesOfBed } from './rules-checks/cases-of-bed.ts';
import { casesOfJobs } from './rules-checks/cases-of-jobs.ts';
import { casesOfJudging } from './rules-checks/cases-of-judging.ts';

/**
 * All 28 cases on one table: what was told, what is asked, our answer and the band it has to lie in. Bands come from
 * the trade's own figures or from arithmetic on what was told. `npx vitest run tests/reference/cases-audit.test.ts
 * --reporter=verbose` prints it.
 */
const rows: readonly CaseRow[] = [...casesOfBed, ...casesOfJudging, ...casesOfJobs];

test('there are 28 cases, each told once', () => {
  expect(new Set(rows.map((row) => row.told)).size).toBe(28);
  expect(rows).toHaveLength(28);
});

describe.each(rows)('$asks — $told', ({ answers, note }) => {
  test.each(answers().map((answer) => [tell(answer), answer] as const))('%s', (told, answer) => {
    expect(holds(answer), `${told}${note ? ` (${note})` : ''}`).toBe(true);
  });
});
