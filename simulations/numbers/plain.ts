/**
 * Elementary functions from + − × ÷ and square root alone. Those five are rounded the same way by every engine, the
 * built-in sine and logarithm are not; so a bed computed in Node and in a browser is the same to the last bit.
 */

const HALF_PI = 1.5707963267948966;
const DEG = HALF_PI / 90;

/** Sine of a small angle, |x| ≤ π/4, by its series. */
function sineSeries(x: number): number {
  const q = x * x;
  let term = x;
  let sum = x;
  for (let n = 2; n <= 18; n += 2) {
    term = (-term * q) / (n * (n + 1));
    sum += term;
  }
  return sum;
}

function cosineSeries(x: number): number {
  const q = x * x;
  let term = 1;
  let sum = 1;
  for (let n = 1; n <= 17; n += 2) {
    term = (-term * q) / (n * (n + 1));
    sum += term;
  }
  return sum;
}

/** Cosine and sine of an angle in degrees; exact at multiples of 90°. */
export function direction(degrees: number): [cosine: number, sine: number] {
  const turn = degrees - 360 * Math.floor(degrees / 360);
  const quarter = Math.floor((turn + 45) / 90);
  const rest = (turn - 90 * quarter) * DEG;
  const c = cosineSeries(rest);
  const s = sineSeries(rest);
  switch (quarter % 4) {
    case 0:
      return [c, s];
    case 1:
      return [-s, c];
    case 2:
      return [-c, -s];
    default:
      return [s, -c];
  }
}

export const sineOf = (degrees: number): number => direction(degrees)[1];

/** Natural logarithm of x > 0: roots bring x near one, then the series of atanh. */
export function logarithm(x: number): number {
  let root = x;
  let times = 1;
  while (root > 1.1 || root < 0.9) {
    root = Math.sqrt(root);
    times *= 2;
  }
  const t = (root - 1) / (root + 1);
  const q = t * t;
  let term = t;
  let sum = 0;
  for (let n = 1; n <= 21; n += 2) {
    sum += term / n;
    term *= q;
  }
  return 2 * times * sum;
}

export const inverseSinh = (x: number): number => (x < 0 ? -inverseSinh(-x) : logarithm(x + Math.sqrt(1 + x * x)));

/** e to the power x, |x| up to some hundreds. */
export function exponential(x: number): number {
  let halvings = 0;
  let small = x;
  while (small > 0.5 || small < -0.5) {
    small /= 2;
    halvings += 1;
  }
  let term = 1;
  let sum = 1;
  for (let n = 1; n <= 16; n += 1) {
    term = (term * small) / n;
    sum += term;
  }
  for (; halvings > 0; halvings -= 1) sum *= sum;
  return sum;
}

/** Length of a vector (`Math.hypot` is not the same everywhere). */
export const lengthOf = (x: number, y: number): number => Math.sqrt(x * x + y * y);
