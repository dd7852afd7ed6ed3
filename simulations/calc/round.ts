import * as z from 'zod/mini';

import { bank } from '../../quiz-bank/bank.ts';
import { compose } from '../../quiz-bank/engine/compose.ts';
import type { KeyedItem } from '../../quiz-bank/engine/item.ts';
import { letterOf } from '../../quiz-bank/engine/letters.ts';
import { unitOf } from '../../quiz-bank/engine/quantity.ts';
import { roundRefs } from '../../quiz-bank/engine/round.ts';
import { MODULES } from '../../quiz-bank/modules.ts';
import { listOf, oneOf, wholeFrom } from '../input/fields.ts';
import { read } from '../input/read.ts';
import { ruleById, type RuleId } from '../rules/rulebook.ts';
import { sayRule } from '../rules/say.ts';
import type { UnitSystem } from '../units/format.ts';
import type { Verb } from './verb.ts';

const modules = MODULES as unknown as readonly [string, ...string[]];

/** What names a round; shared with `calc mark`. */
export const roundFields = {
  seed: wholeFrom(0, 4_294_967_295),
  items: z.optional(wholeFrom(1, 60)),
  lessons: z.optional(listOf(oneOf(modules), 0, MODULES.length)),
  units: z.optional(oneOf(['imperial', 'metric'])),
};
const schema = z.strictObject(roundFields);

/** What is taken where a field is left out. */
export const roundDefaults = { items: 10, lessons: [] as string[], units: 'imperial' as UnitSystem };

/** A deciding rule with its source, in the reader's units. */
export function sayDeciding(ids: readonly RuleId[], units: UnitSystem) {
  return ids.map((id) => {
    const rule = ruleById(id);
    return { rule: id, says: sayRule(rule, units), source: rule.source };
  });
}

/** The wrong idea behind each wrong answer: a number, a square, a letter, a box set wrong, a verdict. */
function wrongIdeas({ item, key }: KeyedItem) {
  if (key.number && item.form.kind === 'number') {
    // In the reader's unit, as the right answer is.
    const { base } = unitOf(item.form.quantity, item.units);
    return key.number.ideas.map(({ idea, value }) => ({ idea, answer: Math.round((value / base) * 1e6) / 1e6 }));
  }
  if (key.cells) return key.cells.ideas.flatMap(({ idea, cells }) => cells.map((cell) => ({ idea, answer: cell })));
  return key.decisions.flatMap(({ ideas }, at) =>
    Object.entries(ideas).map(([answer, idea]) => ({
      idea,
      answer: item.form.kind === 'all' ? `${letterOf(at)} ${answer}` : answer,
    })),
  );
}

export const printItem = (keyed: KeyedItem) => ({
  ...keyed.item,
  key: { right: keyed.key.right, says: keyed.key.says, why: keyed.key.why, wrongIdeas: wrongIdeas(keyed) },
  rules: sayDeciding(keyed.key.rules, keyed.item.units),
});

/** `calc round`: the items of a round with their keys, the wrong idea behind each wrong choice, and the deciding rules. */
export const round: Verb = (input) => {
  const reading = read(schema, input);
  if (!reading.ok) return reading;
  const {
    seed,
    items = roundDefaults.items,
    lessons = roundDefaults.lessons,
    units = roundDefaults.units,
  } = reading.value;
  const refs = roundRefs(bank, { seed, items, modules: lessons as never[] });
  const assumed = Object.fromEntries(Object.entries(roundDefaults).filter(([name]) => !(name in reading.value)));
  return {
    ok: true,
    value: { bank: bank.version, seed, units, items: refs.map((ref) => printItem(compose(bank, ref, units))), assumed },
  };
};
