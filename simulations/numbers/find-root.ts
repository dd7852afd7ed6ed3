/**
 * Where a rising function passes zero, by halving.
 * @param f rising on [low, high], f(low) ≤ 0 ≤ f(high)
 * @returns the crossing, to about the last digit after 60 halvings
 */
export function rootOfRising(f: (x: number) => number, low: number, high: number, halvings = 60): number {
  let lo = low;
  let hi = high;
  for (let n = 0; n < halvings; n += 1) {
    const middle = 0.5 * (lo + hi);
    if (f(middle) < 0) lo = middle;
    else hi = middle;
  }
  return 0.5 * (lo + hi);
}
