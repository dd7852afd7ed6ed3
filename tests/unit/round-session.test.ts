import { expect, test } from 'vitest';

import { bank } from '@quiz/bank.ts';
import { replayDiagnosis } from '@quiz/engine/diagnose.ts';
import { openSession, type Session, standing } from '@site/islands/rounds/session.ts';

const opened = openSession({ seed: 12, mode: 'diagnosing', modules: [], items: 6, units: 'metric' });
const plan = { seed: 12, modules: [], most: 6, units: 'metric' as const };
const templatesOf = (session: Session): (string | undefined)[] => {
  const { asked, next } = standing(session);
  return [...asked, ...(next ? [next] : [])].map(({ item }) => item.ref.template);
};

test('a diagnosing round that is carried on, taken back or played anew is the one its answers make', () => {
  const answers: string[] = [];
  let session = opened;
  for (let turn = 0; turn < 4; turn++) {
    answers.push(turn % 2 === 0 ? (standing(session).next?.key.right ?? '') : '');
    session = { ...opened, answers: [...answers] };
    standing(session);
  }
  const { asked, next } = replayDiagnosis(bank, plan, answers);
  const anew = [...asked, ...(next ? [next] : [])].map(({ item }) => item.ref.template);
  expect(templatesOf(session)).toEqual(anew);
  // Another tab may stand at an earlier answer, or at another one.
  expect(templatesOf({ ...opened, answers: answers.slice(0, 2) })).toEqual(anew.slice(0, 3));
  expect(templatesOf({ ...opened, answers: [...answers] })).toEqual(anew);
});
