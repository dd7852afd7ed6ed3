import type { ModuleSlug } from '@lessons/course.ts';
import { type OutcomeId, outcomes } from '@lessons/outcomes.ts';

import { FIRST_WAIT_MS } from './due.ts';
import type { RecordKeeper } from './keeper.ts';
import { newCard, reviewed } from './reviews.ts';
import type { Answer, ReviewCard } from './shape.ts';

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
  const tomorrow = at + FIRST_WAIT_MS;
  const cards = outcomes[slug].filter((id) => !known.has(id)).map((id) => newCard(id, tomorrow));
  await keeper.add({ modules: [{ slug, state: 'done', at }], cards });
}

/**
 * A question was answered and marked: kept, and its outcome is scheduled anew.
 * @param besides further outcomes that the question examines: those that come back already are scheduled too, else one
 * that is only ever asked together with another would stay due for ever
 */
export async function keepAnswer(
  keeper: RecordKeeper,
  answer: Omit<Answer, 'id'>,
  besides: readonly OutcomeId[] = [],
): Promise<void> {
  await keeper.ready;
  const { cards } = keeper.get().record;
  const held = (outcome: OutcomeId): ReviewCard | undefined => cards.find((card) => card.outcome === outcome);
  const looked = [
    held(answer.outcome) ?? newCard(answer.outcome, answer.at),
    ...besides.flatMap((outcome) => held(outcome) ?? []),
  ];
  const id = `${answer.template}.${answer.seed}.${answer.slot}@${answer.at}`;
  await keeper.add({
    answers: [{ id, ...answer }],
    cards: looked.map((card) => reviewed(card, answer.points, answer.at)),
  });
}
