import { expect, test } from 'vitest';

import { usesOfRules } from '@site/components/sources/rule-uses.ts';

test('each part that names a rule is listed under it, once, and nothing else is', () => {
  const uses = usesOfRules(
    {
      sheet: ["valueOf('bed.least', 'bed'); valueOf('bed.least', 'bed')", 'no.such-rule'],
      rounds: ['`coverage.wet`'],
      modules: new Map([['combing', 'rules: ["bed.least"] and example.com']]),
    },
    { job: 'Sheet', rounds: 'Rounds', module: 'module' },
  );
  expect(uses.get('bed.least')?.map((one) => one.path)).toEqual(['/job/', '/lessons/combing/']);
  expect(uses.get('coverage.wet')).toEqual([{ label: 'Rounds', path: '/rounds/' }]);
  expect([...uses.keys()].toSorted()).toEqual(['bed.least', 'coverage.wet']);
});
