import type { KeyedItem } from '@quiz/engine/item.ts';
import type { Mark } from '@quiz/engine/mark.ts';
import { keepAnswer } from '@site/storage/record/actions.ts';
import { learnerRecord } from '@site/storage/record/record.ts';
import type { Answer } from '@site/storage/record/shape.ts';

/** Puts one marked question into the learner's record; one that could not be read, or was left out, is not an answer. */
export async function keepMark(keyed: KeyedItem, mark: Mark, from: Answer['from'], at: number): Promise<void> {
  if (mark.outcome === 'unreadable' || mark.outcome === 'blank') return;
  const { ref, module, outcomes } = keyed.item;
  const [outcome, ...besides] = outcomes;
  if (outcome === undefined) return;
  const { template, seed, slot } = ref;
  const answer = { module, outcome, template, seed, slot, points: mark.points, ideas: [...mark.ideas], from, at };
  await keepAnswer(learnerRecord(), answer, besides);
}
