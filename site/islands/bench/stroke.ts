/** A place on the floor, mm from the tile's centre. */
export type Spot = readonly [x: number, y: number];

/** What the eye sees in a hand's stroke: the bed is combed along the stroke itself, this only puts it into words. */
export interface StrokeRead {
  /** Straight where the hand kept its line, bent one way, round and round, swaying, or back and forth over itself. */
  shape: 'straight' | 'bent' | 'round' | 'swaying' | 'crossing';
  /** The way the ridges run on the whole, 0…180, to the nearest 5. */
  directionDeg: number;
  /** How far it turns one way in all, degrees. */
  turnDeg: number;
  longMm: number;
}

/** A stroke shorter than this says nothing, mm. */
export const SHORTEST_MM = 40;
/** Places closer than this are one place: a resting hand shakes. */
const STEP_MM = 12;
/** Turning, in all and one way more than the other, that makes a stroke something else than straight, degrees. */
const BENT_DEG = 20;
const ROUND_DEG = 300;
const SWAY_DEG = 50;
/** A turn this sharp ends one stroke and begins another. */
const CORNER_DEG = 75;
/** Share of a stroke's length that must lie one way for its corners to be turns of one line. */
const AGREE = 0.6;

const degrees = (dx: number, dy: number): number => (Math.atan2(dy, dx) * 180) / Math.PI;
const wrapped = (angle: number): number => ((((angle + 180) % 360) + 360) % 360) - 180;

/** The places of a stroke at even steps. */
function evenly(spots: readonly Spot[]): Spot[] {
  const kept: Spot[] = [];
  for (const spot of spots) {
    const last = kept.at(-1);
    if (!last || Math.hypot(spot[0] - last[0], spot[1] - last[1]) >= STEP_MM) kept.push(spot);
  }
  return kept;
}

interface Step {
  long: number;
  heading: number;
}

const stepsOf = (path: readonly Spot[]): Step[] =>
  path.slice(1).map((spot, n) => {
    const from = path[n] ?? spot;
    const dx = spot[0] - from[0];
    const dy = spot[1] - from[1];
    return { long: Math.hypot(dx, dy), heading: degrees(dx, dy) };
  });

/** How a stroke turned: signed and in all, degrees, without the corners, which are counted. */
function turning(steps: readonly Step[]): { oneWay: number; bothWays: number; corners: number } {
  const found = { oneWay: 0, bothWays: 0, corners: 0 };
  steps.forEach(({ heading }, n) => {
    const before = steps[n - 1];
    if (!before) return;
    const turn = wrapped(heading - before.heading);
    if (Math.abs(turn) > CORNER_DEG) found.corners += 1;
    else {
      found.oneWay += turn;
      found.bothWays += Math.abs(turn);
    }
  });
  return found;
}

/**
 * Reads a stroke.
 * @returns null for a stroke too short to mean anything
 */
export function readStroke(spots: readonly Spot[]): StrokeRead | null {
  const steps = stepsOf(evenly(spots));
  const longMm = steps.reduce((sum, step) => sum + step.long, 0);
  if (steps.length < 1 || longMm < SHORTEST_MM) return null;
  // Ridges have no sense: a stroke there and back is one direction, so headings are added at twice their angle.
  const sum = (part: (angle: number) => number): number =>
    steps.reduce((total, { long, heading }) => total + long * part((2 * heading * Math.PI) / 180), 0);
  const sumX = sum(Math.cos);
  const sumY = sum(Math.sin);
  const agree = Math.hypot(sumX, sumY) / longMm;
  const directionDeg = (((Math.round(degrees(sumX, sumY) / 10) * 5) % 180) + 180) % 180;
  const { oneWay, bothWays, corners } = turning(steps);
  const shape = ((): StrokeRead['shape'] => {
    if (Math.abs(oneWay) >= ROUND_DEG) return 'round';
    if (corners > 0) return agree < AGREE ? 'crossing' : 'straight';
    if (Math.abs(oneWay) >= BENT_DEG && Math.abs(oneWay) > 0.7 * bothWays) return 'bent';
    return bothWays >= SWAY_DEG ? 'swaying' : 'straight';
  })();
  return { shape, directionDeg, turnDeg: Math.abs(oneWay), longMm };
}

/** A kept stroke strays no farther than this from the hand's, mm, while it has places to spare. */
const STRAY_MM = 1.5;
const MOST_SPOTS = 32;

const offLine = ([x, y]: Spot, [ax, ay]: Spot, [bx, by]: Spot): number => {
  const dx = bx - ax;
  const dy = by - ay;
  const along = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(x - ax - along * dx, y - ay - along * dy);
};

/** Drops the places that a straight line between their neighbours replaces (Ramer 1972, Douglas and Peucker 1973). */
function thinned(spots: readonly Spot[], strayMm: number): Spot[] {
  const first = spots[0];
  const last = spots.at(-1);
  if (!first || !last || spots.length < 3) return [...spots];
  let at = 0;
  let most = strayMm;
  spots.forEach((spot, n) => {
    const off = n === 0 || n === spots.length - 1 ? 0 : offLine(spot, first, last);
    if (off > most) [at, most] = [n, off];
  });
  if (at === 0) return [first, last];
  return [...thinned(spots.slice(0, at + 1), strayMm).slice(0, -1), ...thinned(spots.slice(at), strayMm)];
}

/** The stroke in few places, whole mm, fit for an address. */
export function keptStroke(spots: readonly Spot[]): [number, number][] {
  let strayMm = STRAY_MM;
  let kept = thinned(spots, strayMm);
  while (kept.length > MOST_SPOTS) {
    strayMm *= 1.5;
    kept = thinned(spots, strayMm);
  }
  return kept.map(([x, y]) => [Math.round(x), Math.round(y)]);
}
