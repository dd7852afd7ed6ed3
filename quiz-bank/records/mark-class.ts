import type { OutcomeId } from '../../lessons/outcomes.ts';
import type { Bank } from '../engine/compose.ts';
import { compose } from '../engine/compose.ts';
import type { ItemRef, KeyedItem } from '../engine/item.ts';
import { markAnswer, type Mark } from '../engine/mark.ts';
import { roundRefs } from '../engine/round.ts';
import type { ModuleId } from '../modules.ts';
import type { IdeaId } from '../wrong-ideas/idea.ts';
import { roundSeed, seatSeed, type ClassRound } from './class-round.ts';
import type { HandIn } from './hand-in.ts';

/**
 * The questions of a seat: the round's own choice of templates, so that every seat is asked the same things, with the
 * seat's own seed for the figures in them.
 */
export const seatRefs = (bank: Bank, round: ClassRound, seat: number): ItemRef[] =>
  roundRefs(bank, { seed: roundSeed(round), items: round.items, modules: round.modules }).map((ref) => ({
    ...ref,
    seed: seatSeed(round, seat),
  }));

/** A seat's questions with their keys. */
export const seatItems = (bank: Bank, round: ClassRound, seat: number): KeyedItem[] =>
  seatRefs(bank, round, seat).map((ref) => compose(bank, ref, round.units));

/** Makes each seat's questions once, however many hand-ins come from it. */
export function seatShelf(bank: Bank, round: ClassRound): (seat: number) => KeyedItem[] {
  const shelf = new Map<number, KeyedItem[]>();
  return (seat) => {
    const own = round.perSeat ? seat : 0;
    const kept = shelf.get(own) ?? seatItems(bank, round, own);
    shelf.set(own, kept);
    return kept;
  };
}

export interface LearnerMarks {
  handIn: HandIn;
  marks: Mark[];
  /** Share of all points, 0…1. */
  share: number;
  passed: boolean;
}

/** Marks a hand-in from its answers and the questions made again; nothing else in it counts. */
export function markHandIn(handIn: HandIn, round: ClassRound, items: readonly KeyedItem[]): LearnerMarks {
  const marks = items.map((item, at) => markAnswer(item, handIn.answers[at] ?? ''));
  const share = marks.reduce((sum, mark) => sum + mark.points, 0) / Math.max(1, marks.length);
  // A mark of exactly the pass share passes, whatever the binary form of thirds.
  return { handIn, marks, share, passed: share >= round.pass - 1e-9 };
}

export interface OutcomeMarks {
  outcome: OutcomeId;
  module: ModuleId;
  items: number;
  /** Mean share of the points over learners and items. */
  share: number;
}

/** The class by outcome, weakest first. */
export function outcomeMarks(learners: readonly LearnerMarks[], items: readonly KeyedItem[]): OutcomeMarks[] {
  const slots = new Map<OutcomeId, { module: ModuleId; at: number[] }>();
  items.forEach(({ item }, at) => {
    for (const outcome of item.outcomes) {
      const found = slots.get(outcome) ?? { module: item.module, at: [] };
      slots.set(outcome, { ...found, at: [...found.at, at] });
    }
  });
  return [...slots]
    .map(([outcome, { module, at }]) => {
      const points = learners.flatMap(({ marks }) => at.map((slot) => marks[slot]?.points ?? 0));
      return {
        outcome,
        module,
        items: at.length,
        share: points.length === 0 ? 0 : points.reduce((sum, value) => sum + value, 0) / points.length,
      };
    })
    .sort((a, b) => a.share - b.share);
}

export interface IdeaCount {
  idea: IdeaId;
  learners: number;
  times: number;
}

/** The wrong ideas a class showed, most holders first. */
export function ideaCounts(learners: readonly LearnerMarks[]): IdeaCount[] {
  const counts = new Map<IdeaId, IdeaCount>();
  for (const { marks } of learners) {
    const shown = marks.flatMap((mark) => mark.ideas);
    for (const idea of new Set(shown)) {
      const found = counts.get(idea) ?? { idea, learners: 0, times: 0 };
      counts.set(idea, {
        idea,
        learners: found.learners + 1,
        times: found.times + shown.filter((one) => one === idea).length,
      });
    }
  }
  return [...counts.values()].sort((a, b) => b.learners - a.learners || b.times - a.times);
}
