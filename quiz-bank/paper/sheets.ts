import type { Bank } from '../engine/compose.ts';
import type { Item, KeyedItem } from '../engine/item.ts';
import type { ClassRound } from '../records/class-round.ts';
import { seatShelf } from '../records/mark-class.ts';

/** A line of the key: what is right, as it would stand on the sheet; the same in words; and why. */
export interface KeyLine {
  answer: string;
  says: string;
  why: string;
}

/** One printed sheet: a seat's questions. Where all seats get the same figures there is one sheet, for seat null. */
export interface Sheet {
  seat: number | null;
  items: Item[];
  key: KeyLine[];
}

/** "no B" as it stands on paper: the verdict's own words, then the letter. */
function verdictWords({ form }: Item, right: string): string {
  const [verdict = '', letter = ''] = right.split(' ');
  const said = form.kind === 'judge' ? form.verdicts.find((one) => one.letter === verdict)?.text : undefined;
  return `${said ?? verdict}, ${letter}`;
}

function keyLine({ item, key }: KeyedItem): KeyLine {
  const { kind } = item.form;
  const why = key.why[0] ?? '';
  // A number and a square are their own words.
  if (kind === 'number' || kind === 'mark') return { answer: key.says, says: '', why };
  if (item.form.kind !== 'judge') return { answer: key.right, says: key.says, why };
  const reason = item.form.choices.find(({ letter }) => key.right.endsWith(` ${letter}`))?.text ?? key.says;
  return { answer: verdictWords(item, key.right), says: reason, why };
}

/** A sheet of these questions with its key. */
export const sheetOf = (seat: number | null, keyed: readonly KeyedItem[]): Sheet => ({
  seat,
  items: keyed.map(({ item }) => item),
  key: keyed.map(keyLine),
});

/** The sheets of a round with their keys, in the order of the seats asked for. */
export function sheetsOf(bank: Bank, round: ClassRound, seats: readonly number[]): Sheet[] {
  const items = seatShelf(bank, round);
  return (round.perSeat ? seats : [null]).map((seat) => sheetOf(seat, items(seat ?? 0)));
}
