import * as z from 'zod/mini';

import { bank } from '../../quiz-bank/bank.ts';
import { compose } from '../../quiz-bank/engine/compose.ts';
import { replayDiagnosis } from '../../quiz-bank/engine/diagnose.ts';
import { namedIdeas } from '../../quiz-bank/engine/beliefs.ts';
import { markAnswer } from '../../quiz-bank/engine/mark.ts';
import { roundRefs } from '../../quiz-bank/engine/round.ts';
import type { ModuleId } from '../../quiz-bank/modules.ts';
import { listOf, oneOf, textUpTo } from '../input/fields.ts';
import { read } from '../input/read.ts';
import { roundDefaults, roundFields, sayDeciding } from './round.ts';
import type { Verb } from './verb.ts';

const schema = z.strictObject({
  ...roundFields,
  bank: textUpTo(20),
  mode: z.optional(oneOf(['mixed', 'diagnosing'])),
  answers: listOf(textUpTo(80), 0, 60),
});

/** `calc mark`: re-makes the items of a hand-in from its seed and marks the answers. A score in the file is never read. */
export const mark: Verb = (input) => {
  const reading = read(schema, input);
  if (!reading.ok) return reading;
  const defaults = { ...roundDefaults, mode: 'mixed' as const };
  const assumed = Object.fromEntries(Object.entries(defaults).filter(([name]) => !(name in reading.value)));
  const { items = roundDefaults.items, lessons = roundDefaults.lessons, units = roundDefaults.units } = reading.value;
  const given = { ...reading.value, items, units };
  if (given.bank !== bank.version)
    return {
      ok: false,
      faults: [
        {
          path: 'bank',
          problem: `is "${given.bank}", and this is bank ${bank.version}`,
          accepted: 'mark it with the bank it was made from',
        },
      ],
    };
  if (given.answers.length > given.items)
    return {
      ok: false,
      faults: [
        {
          path: 'answers',
          problem: `holds ${given.answers.length}`,
          accepted: `give at most ${given.items}, one an item`,
        },
      ],
    };
  const plan = { seed: given.seed, modules: lessons as ModuleId[], units: given.units };
  const diagnosis =
    given.mode === 'diagnosing' ? replayDiagnosis(bank, { ...plan, most: given.items }, given.answers) : null;
  const keyed =
    diagnosis?.asked ?? roundRefs(bank, { ...plan, items: given.items }).map((ref) => compose(bank, ref, given.units));
  const marks = keyed.map((one, at) => {
    const answer = given.answers[at] ?? '';
    const { outcome, points, ideas, sentence } = markAnswer(one, answer);
    return {
      template: one.item.ref.template,
      outcomes: one.item.outcomes,
      answer,
      outcome,
      points,
      ideas,
      ...(sentence === '' ? {} : { sentence }),
      right: one.key.says,
      why: one.key.why,
      rules: sayDeciding(one.key.rules, given.units),
    };
  });
  const points = marks.reduce((sum, one) => sum + one.points, 0);
  return {
    ok: true,
    value: {
      bank: bank.version,
      seed: given.seed,
      points,
      of: marks.length,
      share: marks.length === 0 ? 0 : points / marks.length,
      marks,
      ...(diagnosis ? { named: namedIdeas(diagnosis.beliefs) } : {}),
      assumed,
    },
  };
};
