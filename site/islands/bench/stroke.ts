import type { CombPattern } from '@sim/bed/types.ts';

/** A place on the floor, mm from the tile's centre. */
export type Spot = readonly [x: number, y: number];

/** What a hand's stroke over the floor means to the comb. */
export interface StrokeRead {
  pattern: CombPattern;
  /** The way the ridges run, 0…180, to the nearest 5. */
  directionDeg: number;
}

/** A stroke shorter than this says nothing, mm. */
export const SHORTEST_MM = 40;
/** Places closer than this are one place: a resting hand shakes. */
const STEP_MM = 12;
/** Turning, in all and one way more than the other, that makes a stroke something else than straight, degrees. */
const FAN_DEG = 35;
const SWIRL_DEG = 300;
const WOBBLE_DEG = 70;
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
 * Reads a stroke: straight where the hand kept its line, fanned where it turned one way, swirled where it went round,
 * wobbling where it turned both ways, crossed where a second stroke lies over the first.
 * @returns null for a stroke too short to mean anything
 */
export function readStroke(spots: readonly Spot[]): StrokeRead | null {
  const steps = stepsOf(evenly(spots));
  const travelled = steps.reduce((sum, step) => sum + step.long, 0);
  if (steps.length < 2 || travelled < SHORTEST_MM) return null;
  // Ridges have no sense: a stroke there and back is one direction, so headings are added at twice their angle.
  const sum = (part: (angle: number) => number): number =>
    steps.reduce((total, { long, heading }) => total + long * part((2 * heading * Math.PI) / 180), 0);
  const sumX = sum(Math.cos);
  const sumY = sum(Math.sin);
  const agree = Math.hypot(sumX, sumY) / travelled;
  const directionDeg = (((Math.round(degrees(sumX, sumY) / 10) * 5) % 180) + 180) % 180;
  const { oneWay, bothWays, corners } = turning(steps);
  const pattern = ((): CombPattern => {
    if (Math.abs(oneWay) >= SWIRL_DEG) return 'swirl';
    if (corners > 0) return agree < AGREE ? 'crossed' : 'straight';
    if (Math.abs(oneWay) >= FAN_DEG && Math.abs(oneWay) > 0.7 * bothWays) return 'fan';
    return bothWays >= WOBBLE_DEG ? 'wobble' : 'straight';
  })();
  return { pattern, directionDeg };
}
