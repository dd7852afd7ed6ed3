/** One figure or word that a case asks for, ours beside the band it has to lie in. */
export type Answer =
  | { what: string; found: number; least: number; most: number }
  | { what: string; found: string | boolean; is: string | boolean };

/** A case met by people who set tile: what it asks, and what our code makes of it. */
export interface CaseRow {
  told: string;
  asks: 'plan' | 'judgement' | 'coverage' | 'quantity' | 'cause';
  answers: () => readonly Answer[];
  /** What the case leaves untold and we chose, or where our answer and the case differ. */
  note?: string;
}

export const between = (what: string, found: number, least: number, most: number): Answer => ({
  what,
  found,
  least,
  most,
});
export const is = (what: string, found: string | boolean, wanted: string | boolean): Answer => ({
  what,
  found,
  is: wanted,
});

const rounded = (value: number): string => String(Number(value.toPrecision(3)));

export const holds = (answer: Answer): boolean =>
  'is' in answer ? answer.found === answer.is : answer.found >= answer.least && answer.found <= answer.most;

/** “coverage 0.59, asked 0.25–0.65” */
export const tell = (answer: Answer): string =>
  'is' in answer
    ? `${answer.what}: ${answer.found}`
    : `${answer.what}: ${rounded(answer.found)}, asked ${rounded(answer.least)}–${rounded(answer.most)}`;
