import type { Bank } from '@quiz/engine/compose.ts';
import type { ClassRound } from '@quiz/records/class-round.ts';
import type { HandIn } from '@quiz/records/hand-in.ts';
import { ideaCounts, markHandIn, outcomeMarks, seatShelf, type LearnerMarks } from '@quiz/records/mark-class.ts';
import { classStatistics } from '@quiz/records/statistics.ts';

import type { ClassMarks } from './marking-protocol.ts';

/**
 * Marks a class: makes each seat's questions again and marks the answers by them.
 * @param progress called after each hand-in with the share done
 */
export function markAll(
  bank: Bank,
  round: ClassRound,
  handIns: readonly HandIn[],
  progress: (share: number) => void = () => undefined,
): ClassMarks {
  const items = seatShelf(bank, round);
  const learners: LearnerMarks[] = [];
  for (const [at, handIn] of handIns.entries()) {
    learners.push(markHandIn(handIn, round, items(handIn.seat)));
    progress((at + 1) / handIns.length);
  }
  const asked = items(0);
  return {
    learners,
    items: asked.map(({ item }) => ({ template: item.ref.template, module: item.module, ask: item.ask })),
    outcomes: outcomeMarks(learners, asked),
    ideas: ideaCounts(learners),
    statistics: classStatistics(learners.map(({ marks }) => marks.map((mark) => mark.points))),
  };
}
