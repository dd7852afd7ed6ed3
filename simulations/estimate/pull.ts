/** What a clean sample leaves possible; the chance of missing every bad tile is at most this. */
export const MISS = 0.05;
/** Above so many tiles the floor counts as endless beside the sample. */
const ENDLESS = 100000;

/** Chance that a sample of `lifted` out of `all` holds none of the `bad` (hypergeometric, exact product). */
export function chanceAllGood(all: number, bad: number, lifted: number): number {
  let chance = 1;
  for (let n = 0; n < lifted; n += 1) chance *= Math.max(0, all - bad - n) / (all - n);
  return chance;
}

/**
 * Greatest share of bad tiles that still has a chance of 1 in 20 or more of showing none in the sample.
 * Exact: hypergeometric for a counted floor, binomial (1 − 0.05^(1/n)) for an endless one.
 * @param all tiles on the floor @param lifted tiles lifted, all of them good, 1…all
 */
export function stillBad(all: number, lifted: number): { share: number; method: 'hypergeometric' | 'binomial' } {
  if (all > ENDLESS) return { share: 1 - MISS ** (1 / lifted), method: 'binomial' };
  let low = 0;
  let high = all - lifted;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (chanceAllGood(all, middle, lifted) >= MISS) low = middle;
    else high = middle - 1;
  }
  return { share: low / all, method: 'hypergeometric' };
}
