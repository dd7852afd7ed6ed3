import type { OutcomeId } from '../../lessons/outcomes.ts';
import type { RuleId } from '../../simulations/rules/rulebook.ts';
import type { UnitSystem } from '../../simulations/units/format.ts';
import type { ModuleId } from '../modules.ts';
import type { IdeaId } from '../wrong-ideas/idea.ts';
import type { Picture } from './picture.ts';
import type { Quantity } from './quantity.ts';

/** Which question: with the bank's version this is enough to make it again, key and all. */
export interface ItemRef {
  template: string;
  seed: number;
  slot: number;
}

export interface Choice {
  /** A capital letter, as on paper. */
  letter: string;
  text: string;
}

/** What the learner gives back. */
export type Form =
  | { kind: 'one'; choices: Choice[] }
  | { kind: 'all'; choices: Choice[] }
  | { kind: 'order'; choices: Choice[]; first: string; last: string }
  | { kind: 'number'; quantity: Quantity; unit: string; tolerance: string }
  | { kind: 'mark'; columns: number; rows: number }
  | { kind: 'judge'; verdicts: [Choice, Choice]; choices: Choice[] };

/** A question as the learner sees it. It holds nothing from which the key could be read. */
export interface Item {
  ref: ItemRef;
  bank: string;
  units: UnitSystem;
  module: ModuleId;
  outcomes: readonly OutcomeId[];
  story: string[];
  facts: { name: string; value: string }[];
  ask: string;
  picture: Picture | null;
  /** How points are given, said before the answer. */
  credit: string;
  form: Form;
}

/** One decision that is marked by itself. */
export interface Decision {
  right: string;
  /** A wrong answer to this decision → the idea it shows. */
  ideas: Record<string, IdeaId>;
  /** Number of wrong answers that show no idea (for the response model). */
  others: number;
}

export interface Key {
  /** The right answer in the form a learner gives it. */
  right: string;
  decisions: Decision[];
  /** For a number: the value, tolerance and what each idea would say, all in the quantity's base unit. */
  number: { value: number; tolerance: number; ideas: { idea: IdeaId; value: number }[] } | null;
  /** For a mark: every accepted cell and the cells an idea leads to. */
  cells: { right: string[]; ideas: { idea: IdeaId; cells: string[] }[] } | null;
  /** The right answer in words. */
  says: string;
  why: string[];
  /** Ids of the rules that decide. */
  rules: RuleId[];
  picture: Picture | null;
}

export interface KeyedItem {
  item: Item;
  key: Key;
}
