import type { DeskRound } from '@quiz/records/desk-book.ts';
import type { desk as words } from '@site/messages/en/desk.ts';
import type { ideaWords } from '@site/messages/en/rounds.ts';

import type { ClassMarks } from './marking-protocol.ts';

/** A learner a row: who, what mark, each question's points, the ideas shown. */
export function marksRows(
  held: DeskRound,
  marks: ClassMarks,
  say: (typeof words)['marks'],
  ideas: typeof ideaWords,
  seat: string,
): Record<string, string | number>[] {
  return marks.learners.map(({ handIn, marks: own, share, passed }) => ({
    [seat]: handIn.seat,
    [say.learners]: handIn.name || (held.seats[handIn.seat - 1] ?? ''),
    [say.share]: Math.round(share * 1000) / 10,
    [say.passed]: passed ? say.yes : say.no,
    ...Object.fromEntries(own.map((mark, at) => [`${at + 1}`, Math.round(mark.points * 100) / 100])),
    [say.ideas]: [...new Set(own.flatMap((mark) => mark.ideas))].map((id) => ideas[id].name).join('; '),
  }));
}

/** Rows as text that any spreadsheet opens, with no cell that would run as a formula. */
export async function safeCsv(rows: Record<string, string | number>[]): Promise<string> {
  const { unparse } = (await import('papaparse')).default;
  return `\uFEFF${unparse(rows, { escapeFormulae: true, newline: '\r\n' })}`;
}
