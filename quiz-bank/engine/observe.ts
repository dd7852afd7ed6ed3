import type { IdeaId } from '../wrong-ideas/idea.ts';
import type { Given } from './answer.ts';
import type { Key } from './item.ts';
import { letterOf } from './letters.ts';

/** What one decision showed: right, a wrong idea, or a wrong answer that shows none. */
export type Observation = 'right' | 'other' | { idea: IdeaId };

const within = (a: number, b: number, tolerance: number): boolean =>
  // A hair of slack for the way into binary and back; far below any tolerance asked for.
  Math.abs(a - b) <= tolerance + 1e-9 * Math.max(1, Math.abs(b));

function choose(key: Key, at: number, answer: string): Observation {
  const decision = key.decisions[at];
  if (!decision) return 'other';
  if (decision.right === answer) return 'right';
  const idea = decision.ideas[answer];
  return idea ? { idea } : 'other';
}

/** One observation for each decision of the item, in the key's order. */
export function observe(key: Key, given: Given): Observation[] {
  switch (given.kind) {
    case 'one':
      return [choose(key, 0, given.letter)];
    case 'all':
      return key.decisions.map((_, at) => choose(key, at, given.letters.includes(letterOf(at)) ? 'on' : 'off'));
    case 'order':
      return [choose(key, 0, given.letters)];
    case 'judge':
      return [choose(key, 0, given.verdict), choose(key, 1, given.letter)];
    case 'number': {
      const { number } = key;
      if (!number) return ['other'];
      if (within(given.value, number.value, number.tolerance)) return ['right'];
      const held = number.ideas.find(({ value }) => within(given.value, value, number.tolerance));
      return [held ? { idea: held.idea } : 'other'];
    }
    case 'mark': {
      if (key.cells?.right.includes(given.cell)) return ['right'];
      const held = key.cells?.ideas.find(({ cells }) => cells.includes(given.cell));
      return [held ? { idea: held.idea } : 'other'];
    }
  }
}
