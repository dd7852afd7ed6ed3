/**
 * Where a rising function passes zero, by halving. The places looked at do not depend on the function, so the answer
 * moves one way with whatever raises it, jumps and all.
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

/** Share of the bracket by which a secant's guess is moved towards its middle, to close the bracket from both sides. */
const TRUNCATION = 0.1;
/** Halvings that may be lost to secants. */
const SPARE = 6;

/**
 * The same for a smooth function, by secants held near to what halving would leave (interpolate, truncate,
 * project: I. F. D. Oliveira and R. H. C. Takahashi, ACM Transactions on Mathematical Software 47 (2021) no. 1):
 * a dozen looks, and never more than six beyond halving.
 * @param f rising on [low, high]
 * @param halvings how narrow the last bracket is: as after so many halvings; 60 is about the last digit
 * @returns the crossing, within that bracket; an end where it lies beyond
 */
export function rootOfSmooth(f: (x: number) => number, low: number, high: number, halvings = 60): number {
  let lo = low;
  let hi = high;
  let under = f(lo);
  let over = f(hi);
  if (under >= 0) return low;
  if (over < 0) return high;
  let narrow = high - low;
  for (let n = 0; n < halvings; n += 1) narrow /= 2;
  let allowed = high - low;
  for (let n = 0; n < SPARE; n += 1) allowed *= 2;
  for (let n = 0; n < halvings + SPARE && hi - lo > narrow; n += 1) {
    const width = hi - lo;
    const middle = lo + 0.5 * width;
    const secant = (over * lo - under * hi) / (over - under);
    let x = middle;
    // Values that are no number leave only halving.
    if (Number.isFinite(secant)) {
      const way = secant < middle ? 1 : -1;
      const lead = Math.max((TRUNCATION * width * width) / (high - low), 0.5 * narrow);
      const moved = lead <= Math.abs(middle - secant) ? secant + way * lead : middle;
      const most = allowed - 0.5 * width;
      x = Math.abs(moved - middle) <= most ? moved : middle - way * most;
    }
    const value = f(x);
    if (value < 0) {
      lo = x;
      under = value;
    } else {
      hi = x;
      over = value;
    }
    allowed *= 0.5;
  }
  return hi;
}
