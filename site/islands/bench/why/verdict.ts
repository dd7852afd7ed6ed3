import { formatShare } from '@sim/units/format.ts';
import { bench as words } from '@site/messages/en/bench.ts';

/** A guess of the coverage beside the truth, in words; both are shares. */
export function verdictOf(guessed: number, found: number): string {
  const off = Math.round(guessed * 100) - Math.round(found * 100);
  const guess = formatShare(guessed);
  const truth = formatShare(found);
  if (off === 0) return words.why.exact(truth);
  return off > 0 ? words.why.high(guess, truth, off) : words.why.low(guess, truth, -off);
}
