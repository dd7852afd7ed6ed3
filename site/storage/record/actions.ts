import type { ModuleSlug } from '@lessons/course.ts';
import { outcomes } from '@lessons/outcomes.ts';

import type { RecordKeeper } from './keeper.ts';
import { newCard, reviewed } from './reviews.ts';
import type { Answer } from './shape.ts';

/** A module was opened; a finished one stays finished. */
export async function beginModule(keeper: RecordKeeper, slug: ModuleSlug, at: number): Promise<void> {
  await keeper.ready;
  if (!keeper.get().record.modules.some((one) => one.slug === slug))
    await keeper.add({ modules: [{ slug, state: 'begun', at }] });
}

/** A module is done: its outcomes that were never asked come up for review from the next day on. */
export async function finishModule(keeper: RecordKeeper, slug: ModuleSlug, at: number): Promise<void> {
  await keeper.ready;
  const known = new Set(keeper.get().record.cards.map((card) => card.outcome));
  const tomorrow = at + 24 * 3600 * 1000;
  const cards = outcomes[slug].filter((id) => !known.has(id)).map((id) => newCard(id, tomorrow));
  await keeper.add({ modules: [{ slug, state: 'done', at }], cards });
}

/** A question was answered and marked: kept, and its outcome is scheduled anew. */
export async function keepAnswer(keeper: RecordKeeper, answer: Omit<Answer, 'id'>): Promise<void> {
  await keeper.ready;
  const held = keeper.get().record.cards.find((card) => card.outcome === answer.outcome);
  const card = reviewed(held ?? newCard(answer.outcome, answer.at), answer.points, answer.at);
  const id = `${answer.template}.${answer.seed}.${answer.slot}@${answer.at}`;
  await keeper.add({ answers: [{ id, ...answer }], cards: [card] });
}
