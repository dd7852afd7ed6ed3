import type { UnitSystem } from '../../simulations/units/format.ts';
import { clashes } from './clash.ts';
import { drawFrom, jobDraw } from './draw.ts';
import type { Item, ItemRef, KeyedItem } from './item.ts';
import { arrange } from './arrange.ts';
import { speaker, type Words } from './say.ts';
import type { Posed, Template } from './template.ts';

/** The words of one language: each template's own, and those that all share. */
export interface WordList {
  templates: Record<string, Words>;
  shared: Words;
}

/** Everything an item is made from, besides its seed. */
export interface Bank {
  version: string;
  templates: readonly Template[];
  words: WordList;
}

/** A template that rejects this many draws in a row is badly made. */
const MOST_DRAWS = 400;

/**
 * Makes a question and its key from a seed. The same arguments give the same question anywhere. The units
 * belong to them: a reader in millimetres gets tile and tools of metric sizes, so the job is another one.
 * @throws Error when the template is not in the bank or keeps rejecting its own draws
 */
export function compose(bank: Bank, ref: ItemRef, units: UnitSystem): KeyedItem {
  const template = bank.templates.find(({ id }) => id === ref.template);
  if (!template) throw new Error(`The bank holds no template "${ref.template}".`);
  const name = [bank.version, ref.template, ref.seed, ref.slot] as const;
  const say = speaker(units, template.id, bank.words.templates[template.id] ?? {}, bank.words.shared);
  const draw = jobDraw(drawFrom(...name, 'job'), units);
  for (let attempt = 0; attempt < MOST_DRAWS; attempt++) {
    const prepared = template.prepare(draw);
    if (!prepared) continue;
    const posed = prepared.pose(say);
    if (!clashes(posed.answer)) return finish(bank, template, ref, units, posed);
  }
  throw new Error(`${template.id} rejected ${MOST_DRAWS} draws of seed ${ref.seed}.`);
}

function finish(bank: Bank, template: Template, ref: ItemRef, units: UnitSystem, posed: Posed): KeyedItem {
  // Places come from a stream of their own: what the job drew must not decide where its key stands.
  const places = drawFrom(bank.version, ref.template, ref.seed, ref.slot, 'places');
  const { form, credit, ...key } = arrange(posed.answer, places, units, bank.words.shared);
  const item: Item = {
    ref,
    bank: bank.version,
    units,
    module: template.module,
    outcomes: template.outcomes,
    story: posed.story,
    facts: (posed.facts ?? []).map(([name, value]) => ({ name, value })),
    ask: posed.ask,
    picture: posed.picture ?? null,
    credit,
    form,
  };
  return { item, key: { ...key, why: posed.why, rules: posed.rules, picture: posed.whyPicture ?? null } };
}
