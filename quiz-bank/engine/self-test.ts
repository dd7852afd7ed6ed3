import { NONE_TICKED } from './answer.ts';
import { unitOf } from './quantity.ts';
import type { KeyedItem } from './item.ts';
import { cellName } from './letters.ts';

/** Answers a question makes to test itself: marked, they must come out as their names say. */
export interface SelfAnswers {
  right: string;
  /** Every wrong answer that shows an idea, with the idea, and one that shows none where there is one. */
  wrong: { answer: string; idea: string | null }[];
  unreadable: string[];
}

const reversed = (text: string): string => [...text].reverse().join('');

/** A number outside the tolerance of the key and of every idea, in the asked unit. */
function strayNumber({ key, item }: KeyedItem): string {
  const { number } = key;
  if (!number || item.form.kind !== 'number') return '0';
  const most = Math.max(number.value, ...number.ideas.map(({ value }) => value));
  const { base } = unitOf(item.form.quantity, item.units);
  return (((most + number.tolerance) * 3) / base + 7).toFixed(3);
}

function strayCell({ key, item }: KeyedItem): string | null {
  if (item.form.kind !== 'mark') return null;
  const taken = new Set([...(key.cells?.right ?? []), ...(key.cells?.ideas.flatMap(({ cells }) => cells) ?? [])]);
  for (let row = 0; row < item.form.rows; row++)
    for (let column = 0; column < item.form.columns; column++)
      if (!taken.has(cellName(column, row))) return cellName(column, row);
  return null;
}

export function selfAnswers(keyed: KeyedItem): SelfAnswers {
  const { item, key } = keyed;
  const { form } = item;
  const ideasOf = (at: number) => Object.entries(key.decisions[at]?.ideas ?? {});
  switch (form.kind) {
    case 'one':
      return {
        right: key.right,
        wrong: form.choices
          .filter(({ letter }) => letter !== key.right)
          .map(({ letter }) => ({ answer: letter, idea: key.decisions[0]?.ideas[letter] ?? null })),
        unreadable: ['AB', '7', '?'],
      };
    case 'all':
      return {
        right: key.right,
        // The decisions of the boxes flipped one by one.
        wrong: form.choices.map(({ letter }, at) => {
          const ticked = key.right.includes(letter)
            ? key.right.replace(letter, '')
            : [...key.right, letter].sort().join('');
          return {
            answer: ticked === '' ? NONE_TICKED : ticked,
            idea: Object.values(key.decisions[at]?.ideas ?? {})[0] ?? null,
          };
        }),
        unreadable: ['Z', 'A9'],
      };
    case 'order':
      return {
        right: key.right,
        wrong: [
          ...ideasOf(0).map(([answer, idea]) => ({ answer, idea })),
          ...(reversed(key.right) in (key.decisions[0]?.ideas ?? {})
            ? []
            : [{ answer: reversed(key.right), idea: null }]),
        ],
        unreadable: [key.right.slice(1), `${key.right}A`],
      };
    case 'number': {
      const { base } = unitOf(form.quantity, item.units);
      return {
        right: key.right,
        wrong: [
          ...(key.number?.ideas.map(({ idea, value }) => ({
            answer: String(Math.round((value / base) * 1e6) / 1e6),
            idea,
          })) ?? []),
          { answer: strayNumber(keyed), idea: null },
        ],
        unreadable: ['about half', '1,250', '-3', '4 furlongs'],
      };
    }
    case 'mark': {
      const stray = strayCell(keyed);
      return {
        right: key.right,
        wrong: [
          ...(key.cells?.ideas.flatMap(({ idea, cells }) =>
            cells.slice(0, 1).map((cell) => ({ answer: cell, idea })),
          ) ?? []),
          ...(stray ? [{ answer: stray, idea: null }] : []),
        ],
        unreadable: ['Z99', 'middle'],
      };
    }
    case 'judge': {
      const [verdict = '', letter = ''] = key.right.split(' ');
      const other = verdict === 'yes' ? 'no' : 'yes';
      return {
        right: key.right,
        wrong: [
          { answer: `${other} ${letter}`, idea: key.decisions[0]?.ideas[other] ?? null },
          ...form.choices
            .filter((choice) => choice.letter !== letter)
            .map((choice) => ({
              answer: `${verdict} ${choice.letter}`,
              idea: key.decisions[1]?.ideas[choice.letter] ?? null,
            })),
        ],
        unreadable: [verdict, letter, 'maybe A'],
      };
    }
  }
}
