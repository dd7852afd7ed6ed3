import type { IdeaId } from '../wrong-ideas/idea.ts';
import { type Given, readAnswer } from './answer.ts';
import type { KeyedItem } from './item.ts';
import { observe } from './observe.ts';

/** The mark of one item. `unreadable` costs the point but is told apart from wrong; `blank` was not answered. */
export interface Mark {
  outcome: 'right' | 'wrong' | 'unreadable' | 'blank';
  /** 0…1; a wrong answer may still hold part of the point. */
  points: number;
  /** The wrong ideas this answer shows. */
  ideas: IdeaId[];
  /** For an unreadable answer: what would have been read. */
  sentence: string;
}

/** Share of neighbours in the key that stand in the same order in the answer. */
function pairsKept(right: string, given: string): number {
  const pairs = [...right].slice(1).map((next, at) => given.indexOf(right[at] ?? '') < given.indexOf(next));
  return pairs.filter(Boolean).length / pairs.length;
}

function pointsOf({ key }: KeyedItem, given: Given, right: boolean[]): number {
  const hits = right.filter(Boolean).length;
  switch (given.kind) {
    // A box put right counts one, a box put wrong takes one back: ticking everything, or nothing, earns little.
    case 'all':
      return Math.max(0, (2 * hits - right.length) / right.length);
    case 'order':
      return pairsKept(key.right, given.letters);
    default:
      return hits / right.length;
  }
}

/** Marks one answer from the item and its key alone. */
export function markAnswer(keyed: KeyedItem, text: string): Mark {
  const reading = readAnswer(keyed.item, text);
  if (!reading.ok)
    return { outcome: reading.blank ? 'blank' : 'unreadable', points: 0, ideas: [], sentence: reading.sentence };
  const seen = observe(keyed.key, reading.given);
  const right = seen.map((one) => one === 'right');
  const ideas = seen.flatMap((one) => (typeof one === 'object' ? [one.idea] : []));
  return {
    outcome: right.every(Boolean) ? 'right' : 'wrong',
    points: pointsOf(keyed, reading.given, right),
    ideas: [...new Set(ideas)],
    sentence: '',
  };
}
